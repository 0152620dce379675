// Cautions, each shown at the moment of the act. They say why and what is usual, and leave the deciding to those who may decide.

export type CautionKind = 'fire' | 'breath' | 'lead' | 'skin';

export interface Caution {
  readonly id: string;
  readonly kind: CautionKind;
  readonly title: string;
  /** What to do, in a line. */
  readonly text: string;
  readonly why: string;
  /** What a careful shop does. */
  readonly usual: string;
  readonly decides: string;
}

/** Who decides, said with every caution. */
export const WHO_DECIDES =
  'Your product’s safety data sheet, local code and licensed practice decide; this app does not.';

const caution = <const Id extends string>(
  id: Id,
  kind: CautionKind,
  title: string,
  text: string,
  why: string,
  usual: string,
): Caution & { readonly id: Id } => ({ id, kind, title, text, why, usual, decides: WHO_DECIDES });

export const CAUTIONS = [
  caution(
    'ignition',
    'fire',
    'Sources of ignition out',
    'No flame, heater, pilot light, switch or tool that sparks within 6 m (20 ft) of the spraying. Extinguisher for liquids (class B) at hand.',
    'Solvent vapour is heavier than air, runs along the floor and lights at a distance. Mist burns even where vapour alone would not.',
    '29 CFR 1910.107(c) and NFPA 33 keep sparks and open flames 20 ft away from a spraying area.',
  ),
  caution(
    'phone',
    'fire',
    'This phone stays outside',
    'Leave it 6 m (20 ft) from the spraying area. Mark the coat before you go in or after you come out.',
    'An ordinary phone is not rated for air that may hold flammable vapour.',
    'Electrical things inside a spraying area are rated for it (29 CFR 1910.107(c)); a phone is not.',
  ),
  caution(
    'static',
    'fire',
    'Bond the metal cans',
    'Join can and cup with a bonding wire before you pour or strain.',
    'Running liquid builds up a static charge. One spark lights the vapour over a can.',
    'Metal containers are bonded while flammable liquid is poured (29 CFR 1910.106).',
  ),
  caution(
    'overspray',
    'fire',
    'Nitrocellulose dust and filters out today',
    'Wet dry overspray, sweepings, masking paper and filters with water, put them in a closed metal can and take them out of the building today.',
    'Dry nitrocellulose overspray heats by itself and burns very fast, hours later and with nobody there.',
    'Filters with nitrocellulose residue are kept under water until they are disposed of (29 CFR 1910.107(b)(5)).',
  ),
  caution(
    'rags',
    'fire',
    'Oily rags under water',
    'Put rags and pads with oil or oil varnish in a closed metal can with water, or spread them flat outdoors, before you leave.',
    'Drying oil gives off heat. In a heap the heat builds up and the rag catches fire by itself within hours.',
    'An oily-waste can with a lid, emptied every day (29 CFR 1910.106).',
  ),
  caution(
    'aerosol',
    'fire',
    'The can’s gas burns too',
    'Treat a spray can as spraying: no ignition, air moving. Never heat a can, and empty it by its nozzle only.',
    'The propellant is mostly a flammable gas, and the can bursts when it is warmed over about 50 °C (120 °F).',
    'Short passes in moving air, the can stored cool.',
  ),
  caution(
    'ventilation',
    'breath',
    'Ventilation on',
    'Start the extraction before the first pass and leave it on after the last. Look at the room figures under Air.',
    'Solvent vapour adds up within minutes in a closed room, and a wet piece goes on giving it off.',
    'Extraction through filters to the outside, with clean air let in opposite.',
  ),
  caution(
    'mask',
    'breath',
    'Mask checked',
    'Organic-vapour cartridges with a particulate prefilter, within their schedule; seal check done. Never go by smell.',
    'Many vapours pass a spent cartridge before the nose notices, and a beard breaks the seal.',
    'Fit-tested mask, cartridges changed by a written schedule (29 CFR 1910.134(d)(3)(iii)).',
  ),
  caution(
    'solvent',
    'breath',
    'Organic solvents in this jar',
    'Do not breathe vapour or mist. Leave at once with a headache, dizziness or a sweet taste.',
    'The solvents numb the head first; some harm nerves, liver or an unborn child over time.',
    'Short exposures, clean air, lid on the jar.',
  ),
  caution(
    'isocyanate',
    'breath',
    'Isocyanates: the answer here is not to spray',
    'Do not spray this without training and a supplied-air set-up that meets your code. Cartridges are not the answer.',
    'One exposure can make a person allergic for life; the next can close the airways. Isocyanate has no smell that warns in time.',
    'Trained people with supplied air, in a booth, with health checks. Everyone else chooses another finish.',
  ),
  caution(
    'acid',
    'breath',
    'This cures with acid and gives off formaldehyde',
    'Keep the air moving while it cures, not only while you spray. Keep the catalyst off skin, out of eyes and away from bare metal.',
    'Formaldehyde is let go for days as the film cures; it irritates, and causes cancer (29 CFR 1910.1048).',
    'Pieces cure in a ventilated room where nobody works or sleeps.',
  ),
  caution(
    'dust',
    'breath',
    'Sanding dust',
    'Wear a particulate mask, and take the dust at the tool or sand wet.',
    'Fine dust of finish and of many woods reaches deep into the lungs and makes some people allergic.',
    'Extraction at the tool, wet sanding where the finish allows it.',
  ),
  caution(
    'lead',
    'lead',
    'Old opaque finish: treat it as lead',
    'No dry sanding, scraping or hot air until it is tested. Test it, or treat it as lead.',
    'White and coloured finishes from before about 1980 often hold lead. Its dust poisons, children first, and stays in the house.',
    'A laboratory or a recognised test kit; otherwise wet methods, sheeting, and lead-rated practice (29 CFR 1926.62; 40 CFR 745).',
  ),
  caution(
    'skin',
    'skin',
    'Hands and eyes',
    'Gloves that this solvent does not go through, goggles; wash with soap, never with thinner.',
    'Solvent strips the oil from skin, and some of it goes through the skin into the blood.',
    'Nitrile for a splash, changed at once; the data sheet names the glove for longer.',
  ),
] as const;

export type CautionId = (typeof CAUTIONS)[number]['id'];

/** One caution by its id. */
export const cautionOf = (id: CautionId): Caution => CAUTIONS.find((one) => one.id === id) as Caution;

export const CAUTION_WORDS = {
  before: {
    spray: 'Before the first coat',
    brush: 'Before the first coat',
    mix: 'Before you pour',
    sand: 'Before you sand',
    'end-day': 'Before you leave',
  },
  lead: 'Read these, then confirm. The time is logged.',
  done: 'Read and done',
  why: 'Why',
  usual: 'What is usual',
  always: 'Always shown',
  silence: 'Do not show this one again',
  silenced: 'Not shown again. Bring it back under Air, Cautions.',
  show: 'Show it again',
  logged: (count: number): string => `${count} cautions confirmed and logged.`,
} as const;

/** A second line for the isocyanate caution, where the answer is to stop. */
export const ISOCYANATE_CHOICE = {
  stop: 'Don’t spray it',
  goOn: 'I have the training and supplied air my code asks for',
} as const;
