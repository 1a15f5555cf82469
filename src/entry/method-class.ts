/** How far a figure on a sheet is a measurement: read on an instrument, or reported by the device or what is plugged into it. */
export type MethodClass = 'measured' | 'reported' | 'not said';

/** Words for what a system says of itself: it repeats what was agreed or assumed, and measures nothing. */
const REPORTED =
  /\b(?:operating system|os[- ]reported|reported by|as reported|system (?:report|settings|profiler)|firmware|driver|battery (?:page|settings|status)|power settings|status (?:page|bar)|app|host)\b|\b(?:its|the bank’s|the bank's|the device’s|the device's|own|built-in|on-device) (?:display|screen|gauge)\b/iu;

/** The class of a figure by the author's words for how it was obtained. */
export function methodClass(method: string | null, instrument: string | null): MethodClass {
  if (method !== null && REPORTED.test(method)) return 'reported';
  return method === null && instrument === null ? 'not said' : 'measured';
}
