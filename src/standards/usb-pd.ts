import type { Source } from '../values/value.ts';

/** A place in the edition that offers are judged by. Older sources may follow an older one. */
export function usbPd(section: string): Source {
  return { title: 'USB Power Delivery Specification R3.2 V1.1 (2024-10)', section, standing: 'read' };
}

/** What a rule checker for an older edition had as code, and device logs confirm; its text was not seen. */
export function usbPd30(section: string): Source {
  return { title: 'USB Power Delivery Specification R3.0, as coded in a public rule checker', section, standing: 'secondary' };
}
