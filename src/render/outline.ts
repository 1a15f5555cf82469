import { firstAngleSymbol, outlineDrawing, type DrawnBody, type DrawnEdge } from '../figures/outline-drawing.ts';
import type { Body, Entry } from '../entry/entry.ts';
import type { Quantity } from '../units/quantity.ts';
import { deviceName } from './device-name.ts';
import { sentence } from './words.ts';

/** The outline drawing of a device for the sheet and for the phone, with its notes, scale and the first-angle symbol. */
export function outlineView(entry: Entry): string {
  const body = drawnBody(entry.body);
  const name = deviceName(entry);
  const onSheet = outlineDrawing({ id: 'outline', name, body, ports: entry.ports, layout: 'sheet' });
  const onPhone = outlineDrawing({ id: 'outline-small', name, body, ports: entry.ports, layout: 'phone' });
  const notes = outlineNotes(entry).map((note) => `<li>${sentence(note)}</li>`);
  const scale = onSheet.scale === null ? 'Not to scale' : `Shown ${onSheet.scale}`;
  return (
    `<div class="ol${body.shape === 'box' ? ' three-views' : ''}">${onSheet.svg}${onPhone.svg}<div class="ol-notes note"><h2>Notes</h2><ol>${notes.join('')}</ol>` +
    `<p class="projection">${firstAngleSymbol()}<span>First angle<br>${scale}</span></p></div></div>`
  );
}

function drawnBody(body: Body): DrawnBody {
  const size = body.size?.size;
  if (size === undefined) return { shape: 'unknown' };
  if (size.shape === 'cylinder') return { shape: 'cylinder', diameter: drawnEdge(size.diameter), height: drawnEdge(size.height) };
  const [length, width, height] = size.edges;
  return { shape: 'box', length: drawnEdge(length), width: drawnEdge(width), height: drawnEdge(height) };
}

/** An edge in millimetres with the decimals it was written with, at most two. */
function drawnEdge(edge: Quantity<'length'>): DrawnEdge {
  const decimals = Math.min(2, Math.max(0, Math.ceil(-Math.log10(Math.max(edge.resolution, 1e-9) * 1000) - 1e-6)));
  const mm = edge.nominal * 1000;
  const tolerance = edge.low === null || edge.high === null ? 0 : ((edge.high - edge.low) / 2) * 1000;
  return { mm, text: mm.toFixed(decimals), tolerance: tolerance < 1e-6 ? '' : `±${Number(tolerance.toPrecision(2))}` };
}

function outlineNotes(entry: Entry): readonly string[] {
  const { body } = entry;
  const basis = `${body.basis === 'board' ? 'board without case' : 'cased'}${body.prongs === null || body.prongs === 'none' ? '' : `, prongs ${body.prongs}`}`;
  const outside = [
    ...(body.prongs === 'folded' || body.prongs === 'removed' ? ['prongs'] : []),
    ...(body.inlet === null ? [] : [`inlet ${body.inlet}`]),
    ...(body.plug === null || body.prongs !== null ? [] : [`plug ${body.plug}`]),
    ...(body.cable === 'fixed' ? ['fixed cable'] : []),
  ];
  return [
    body.size === null ? 'The size is not known: nothing here is to scale.' : `Sizes in mm, ${body.size.evidence}; ${basis}.`,
    ...(outside.length === 0 ? [] : [`Not in the volume: ${outside.join(', ')}.`]),
    ...(body.volume === null
      ? []
      : [`Volume ${body.volume.quantity.written}, ${body.volume.evidence}; it counts instead of edges multiplied.`]),
    'Ports by type; their places and the corner radii are conventions of the drawing.',
    ...(body.note === null ? [] : [body.note]),
  ];
}
