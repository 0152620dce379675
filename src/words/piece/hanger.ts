export const HANGER_WORDS = {
  title: 'Hanger label',
  link: 'Print a hanger label',
  lead: 'For the piece’s hanger or tray, printed at 62 by 45 mm (2.4 by 1.8 in). Scan it with the phone’s camera to open the piece.',
  qr: (name: string): string => `QR code that opens ${name}`,
  print: 'Print it',
  started: (when: string): string => `On the bench since ${when}`,
  scan: 'Scan to log a coat or see when it is ready.',
} as const;
