import type { PowerPath } from '../../derived/power-path/power-path.ts';

/** Where the drawing leads. */
export interface PathLinks {
  /** Page of the topology family. */
  readonly familyLink: string;
  readonly partLink: (reference: string) => string;
}

/** What the drawing needs: the path, the name of the device and where it leads. */
export interface PathFigureInput extends PathLinks {
  readonly id: string;
  readonly name: string;
  readonly path: PowerPath;
}
