import type { Formula } from '../../values/formula.ts';
import { boxSurface } from './box-surface.ts';
import { boxVolume } from './box-volume.ts';
import { cylinderVolume } from './cylinder-volume.ts';
import { photoLength } from './photo-length.ts';
import { tiltForeshortening } from './tilt-foreshortening.ts';

/** The formulas of this folder, by name. A test compares the list with the folder. */
export const GEOMETRY_FORMULAS: readonly Formula[] = [boxSurface, boxVolume, cylinderVolume, photoLength, tiltForeshortening];
