/**
 * A stack of coats as the solver sees it: nodes from the base to the air, elements between them.
 *
 * The coordinate is dry volume per area (m), so that shrinking needs no moving mesh (Hartley and Crank 1949).
 * `u[i][n]` is the volume of solvent i per volume of binder at node n. Arrays are longer than `nodes`: they are
 * reused while coats come and go, and nothing is allocated inside a step.
 */
export interface Film {
  readonly solvents: number;
  nodes: number;
  /** Dry thickness of each element, pigment included, m. Element e lies between nodes e and e + 1. */
  readonly dz: Float64Array;
  /** Volume fraction of pigment in the dry film of each element. */
  readonly pigment: Float64Array;
  /** Flux factor of the pigment of each element, 1 for a clear. */
  readonly passage: Float64Array;
  /** Binder volume per area that belongs to each node, m. */
  readonly binder: Float64Array;
  readonly u: readonly Float64Array[];
}

/** Room for nodes: a stack of a hundred coats stays under two hundred. */
export const MOST_NODES = 512;

/** An empty film: a single node at the base, with nothing above it. */
export function createFilm(solvents: number): Film {
  const column = () => new Float64Array(MOST_NODES);
  return {
    solvents,
    nodes: 1,
    dz: column(),
    pigment: column(),
    passage: column(),
    binder: column(),
    u: Array.from({ length: solvents }, column),
  };
}

/** A copy that holds no more than the nodes in use. */
export function packed(film: Film): Film {
  const cut = (column: Float64Array) => column.slice(0, film.nodes);
  const { dz, pigment, passage, binder, u } = film;
  return {
    ...film,
    dz: cut(dz),
    pigment: cut(pigment),
    passage: cut(passage),
    binder: cut(binder),
    u: u.map(cut),
  };
}

/** Puts what a packed film holds into one with room to grow. */
export function unpack(from: Film, into: Film): void {
  into.nodes = from.nodes;
  into.dz.set(from.dz);
  into.pigment.set(from.pigment);
  into.passage.set(from.passage);
  into.binder.set(from.binder);
  for (const [i, column] of from.u.entries()) into.u[i]?.set(column);
}

/** Dry thickness of the whole film, m. */
export function dryThickness(film: Film): number {
  let sum = 0;
  for (let e = 0; e < film.nodes - 1; e++) sum += film.dz[e] as number;
  return sum;
}

/** Volume of solvent i held by the film, m3 per m2. */
export function heldSolvent(film: Film, i: number): number {
  const u = film.u[i] as Float64Array;
  let sum = 0;
  for (let n = 0; n < film.nodes; n++) sum += (u[n] as number) * (film.binder[n] as number);
  return sum;
}

/** Works out the binder that belongs to each node, after the mesh was changed. */
export function shareBinder(film: Film): void {
  const { nodes, dz, pigment, binder } = film;
  binder.fill(0, 0, nodes);
  for (let e = 0; e < nodes - 1; e++) {
    const half = 0.5 * (dz[e] as number) * (1 - (pigment[e] as number));
    binder[e] = (binder[e] as number) + half;
    binder[e + 1] = (binder[e + 1] as number) + half;
  }
}
