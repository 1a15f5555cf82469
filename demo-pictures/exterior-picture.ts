import type { Connector, Entry } from '../src/entry/entry.ts';
import type { Area } from './board-plan.ts';
import { block, letter, mm, sizeFor, type Lettering } from './lettering.ts';
import { framed, type DrawnPicture } from './picture.ts';

/** The case is seen from above its front edge: how much of its top and of its front is left by that view. */
const TOP_SEEN = 0.72;
const FRONT_SEEN = 0.69;

/** Openings of the receptacles in millimetres, as the outline drawing has them. */
const OPENING: Readonly<Record<Connector, readonly [number, number]>> = {
  'USB-C': [8.94, 3.26],
  'USB-A': [12.5, 5.12],
  barrel: [5.5, 5.5],
  'captive cable': [4.5, 4.5],
  wireless: [0, 0],
};

interface Face {
  readonly markup: string;
  readonly bodies: ReadonlyMap<string, Area>;
}

/** The case with its ports, prongs and nameplate, all from the entry. */
export function exterior(entry: Entry, lettering: Lettering): DrawnPicture {
  const size = entry.body.size?.size;
  if (size === undefined) throw new Error(`${entry.slug} states no size`);
  if (size.shape === 'cylinder') return cylinder(entry, size.diameter.nominal * 1e3, size.height.nominal * 1e3, lettering);
  const [length, width, height] = size.edges.map((edge) => edge.nominal * 1e3);
  return box(entry, { length: length ?? 0, width: width ?? 0, height: height ?? 0 }, lettering);
}

interface Edges {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

function box(entry: Entry, edges: Edges, lettering: Lettering): DrawnPicture {
  const dark = entry.device.kind !== 'wall charger';
  const { length } = edges;
  const [top, front] = [edges.width * TOP_SEEN, edges.height * FRONT_SEEN];
  const radius = Math.min(4, 0.16 * edges.height);
  const ink = dark ? '#cdd4d7' : '#5f676a';
  const ports = portFaces(entry, { x: 0, y: top, width: length, height: front }, FRONT_SEEN, ink, lettering);
  const content =
    `<clipPath id="case"><rect width="${mm(length)}" height="${mm(top + front)}" rx="${mm(radius)}"/></clipPath>` +
    stubs(entry, length) +
    `<g clip-path="url(#case)">${block(0, 0, length, top + 1, `fill="url(#${dark ? 'darkTop' : 'caseTop'})"`)}` +
    block(0, top, length, front, `fill="url(#${dark ? 'darkFront' : 'caseFront'})"`) +
    block(0, top - 1.1, length, 1.1, `fill="#fff" opacity="${dark ? 0.12 : 0.55}"`) +
    block(0, top, length, 0.9, `fill="#000" opacity="0.08"`) +
    seam(edges, top, front) +
    block(0, 0, length, top + front, 'fill="url(#rounding)"') +
    `</g>` +
    foldedProngs(entry, length, dark) +
    nameplate(entry, { length, top }, ink, lettering) +
    ports.markup;
  const ground = block(1.5, 2.5, length + 1, top + front + 1, `rx="${mm(radius)}" fill="#000" opacity="0.65"`);
  return framed(
    { extent: { width: length, height: top + front }, shadows: { low: '', tall: '' }, ground, content, bodies: ports.bodies },
    lettering,
  );
}

/** The joint of two shells runs round the front; a tube has none. */
function seam({ length }: Edges, top: number, front: number): string {
  return `<path d="M0 ${mm(top + front * 0.84)}H${mm(length)}" stroke="#000" stroke-width="0.18" opacity="0.35"/>`;
}

function foldedProngs(entry: Entry, length: number, dark: boolean): string {
  if (entry.body.prongs !== 'folded') return '';
  const [x, y, depth] = [length / 2, 2.2, 16.5 * TOP_SEEN];
  const blade = (centre: number): string =>
    block(centre - 3.6, y, 7.2, depth, `rx="0.6" fill="${dark ? '#1b1f22' : '#b9bfbb'}"`) +
    block(centre - 3, y + 0.4, 6, depth - 1, 'rx="0.4" fill="url(#brass)"') +
    `<circle cx="${mm(centre)}" cy="${mm(y + depth - 3)}" r="1" fill="#6f6a58"/>`;
  return blade(x - 6.35) + blade(x + 6.35);
}

/** Round pins that were sawn off for the measurement: what is left of them stands out behind. */
function stubs(entry: Entry, length: number): string {
  if (entry.body.prongs !== 'removed') return '';
  return [-9.5, 9.5].map((away) => block(length / 2 + away - 2, -1.4, 4, 3, 'rx="0.4" fill="url(#brass)"')).join('');
}

function nameplate(entry: Entry, { length, top }: { length: number; top: number }, ink: string, lettering: Lettering): string {
  const { device, nameplate: plate } = entry;
  const start = entry.body.prongs === 'folded' ? 14.2 : top * 0.14;
  const lines = [
    `${device.maker} ${device.name}`.trim(),
    `MODEL ${device.model}`,
    ...plate.inputs.map((input) => `INPUT ${input.written}`),
    ...plate.output.map((line) => `OUTPUT ${line}`),
    ...(plate.total === null ? [] : [`TOTAL ${plate.total.quantity.written} MAX`]),
  ];
  const pitch = Math.min(3.2, (top - start - 3) / lines.length);
  const words = lines.map((text, index) =>
    letter(lettering, {
      text,
      x: 4,
      y: start + pitch * (index + 0.9),
      size: sizeFor(lettering, text, length - (index < 2 ? 16 : 8), pitch * (index === 0 ? 1.02 : 0.74)),
      fill: ink,
      anchor: 'start',
    }),
  );
  const classTwo = plate.marks.includes('class II symbol')
    ? `<g transform="translate(${mm(length - 8.5)} ${mm(start + 0.6)})" fill="none" stroke="${ink}" stroke-width="0.35"><rect width="4.6" height="${mm(4.6 * TOP_SEEN)}"/><rect x="1.15" y="${mm(1.15 * TOP_SEEN)}" width="2.3" height="${mm(2.3 * TOP_SEEN)}"/></g>`
    : '';
  return words.join('') + classTwo;
}

/** Ports from left to right with their names; a second row where one does not hold them. */
function portFaces(entry: Entry, face: Area, seen: number, ink: string, lettering: Lettering): Face {
  const ports = entry.ports.filter(({ connector }) => connector !== 'wireless');
  const needed = ports.reduce((sum, { connector }) => sum + OPENING[connector][0] + 3, 3);
  const rows = needed > face.width ? 2 : 1;
  const perRow = Math.ceil(ports.length / rows);
  const references = connectorsOf(entry);
  const bodies = new Map<string, Area>();
  const markup = ports.map(({ id, connector }, index) => {
    const row = Math.floor(index / perRow);
    const inRow = Math.min(perRow, ports.length - row * perRow);
    const [w, h] = [OPENING[connector][0], OPENING[connector][1] * seen];
    const x = face.x + (face.width * ((index % perRow) + 0.5)) / inRow;
    const y = face.y + (face.height * 0.84 * (row + 0.56)) / rows;
    const reference = references.get(connector)?.shift();
    if (reference !== undefined) bodies.set(reference, { x: x - w / 2, y: y - h / 2, width: w, height: h });
    const name = letter(lettering, { text: id, x, y: y - h / 2 - 1, size: Math.min(2, (face.height / rows) * 0.2), fill: ink });
    return opening(connector, x, y, w, h) + name;
  });
  return { markup: markup.join(''), bodies };
}

/** References of the connectors by the kind that their notes name, in their order. */
function connectorsOf(entry: Entry): ReadonlyMap<Connector, string[]> {
  const found = new Map<Connector, string[]>();
  for (const part of entry.parts.filter(({ role }) => role === 'connector')) {
    const kind: Connector | null = /USB-C/u.test(part.note ?? '') ? 'USB-C' : /USB-A/u.test(part.note ?? '') ? 'USB-A' : null;
    if (kind !== null) found.set(kind, [...(found.get(kind) ?? []), ...part.references]);
  }
  return found;
}

function opening(connector: Connector, x: number, y: number, w: number, h: number): string {
  const round = connector === 'USB-C' ? h / 2 : 0.3;
  return (
    block(x - w / 2 - 0.5, y - h / 2 - 0.4, w + 1, h + 0.9, `rx="${mm(round + 0.4)}" fill="url(#steel)"`) +
    block(x - w / 2, y - h / 2, w, h, `rx="${mm(round)}" fill="#0d1012"`) +
    (connector === 'USB-C'
      ? block(x - w * 0.36, y - h * 0.13, w * 0.72, h * 0.28, 'rx="0.2" fill="#3a3f42"') +
        block(x - w * 0.32, y + h * 0.06, w * 0.64, h * 0.06, 'fill="#c79b4b"')
      : block(x - w * 0.44, y - h * 0.36, w * 0.88, h * 0.36, 'fill="#3d6688"') +
        block(x - w * 0.36, y - h * 0.06, w * 0.72, h * 0.08, 'fill="#c79b4b"'))
  );
}

/** A plug for a car's socket on its side: tip and spring at the left, sleeve and port face at the right. */
function cylinder(entry: Entry, diameter: number, length: number, lettering: Lettering): DrawnPicture {
  const middle = diameter / 2;
  const [neck, tip, faceReach] = [20, 7, diameter * 0.26];
  const sleeveFrom = length * 0.47;
  const faceAt = length;
  const upright = uprightPorts(entry, faceAt, middle, faceReach, lettering);
  const words = [
    `${entry.device.maker} ${entry.device.name}`,
    `MODEL ${entry.device.model}`,
    ...entry.nameplate.inputs.map(({ written }) => `INPUT ${written}`),
    ...(entry.nameplate.total === null ? [] : [`TOTAL ${entry.nameplate.total.quantity.written}`]),
  ];
  const lines = words.map((text, index) =>
    letter(lettering, {
      text,
      x: sleeveFrom + 3,
      y: middle - 4 + index * 3.2,
      size: sizeFor(lettering, text, length - sleeveFrom - faceReach - 4, index === 0 ? 2.8 : 2.1),
      fill: '#23282b',
      anchor: 'start',
    }),
  );
  const content =
    block(0, middle - tip / 2, 8, tip, 'rx="2.4" fill="url(#brass)"') +
    block(6, middle - neck / 2, sleeveFrom - 4, neck, 'rx="2" fill="url(#roundUp)"') +
    [0.16, 0.78]
      .map(
        (at) =>
          `<path d="M14 ${mm(middle - neck / 2 + neck * at)}q9 ${at < 0.5 ? -4 : 4} 18 0" fill="none" stroke="url(#brass)" stroke-width="2.2"/>`,
      )
      .join('') +
    block(sleeveFrom, 0, length - sleeveFrom, diameter, 'rx="2.4" fill="url(#sleeveMetal)"') +
    block(sleeveFrom + 1.4, 0, 0.3, diameter, 'fill="#000" opacity="0.35"') +
    `<ellipse cx="${mm(faceAt)}" cy="${mm(middle)}" rx="${mm(faceReach)}" ry="${mm(middle)}" fill="#8d9498"/><ellipse cx="${mm(faceAt)}" cy="${mm(middle)}" rx="${mm(faceReach * 0.94)}" ry="${mm(middle * 0.95)}" fill="#1d2124"/>` +
    lines.join('') +
    upright.markup;
  const ground = block(2, middle, length + faceReach - 2, middle + 1.6, 'rx="6" fill="#000" opacity="0.6"');
  return framed(
    { extent: { width: length + faceReach, height: diameter }, shadows: { low: '', tall: '' }, ground, content, bodies: upright.bodies },
    lettering,
  );
}

/** Two ports one over the other on a face seen from the side: narrowed like the face itself. */
function uprightPorts(entry: Entry, x: number, middle: number, reach: number, lettering: Lettering): Face {
  const references = connectorsOf(entry);
  const bodies = new Map<string, Area>();
  const narrowed = reach / middle;
  const markup = entry.ports.map(({ id, connector }, index) => {
    const y = middle + (index - (entry.ports.length - 1) / 2) * middle * 0.8;
    const [w, h] = [OPENING[connector][0] * narrowed * 1.5, OPENING[connector][1]];
    const reference = references.get(connector)?.shift();
    if (reference !== undefined) bodies.set(reference, { x: x - w / 2, y: y - h / 2, width: w, height: h });
    return opening(connector, x, y, w, h) + letter(lettering, { text: id, x, y: y - h / 2 - 1.2, size: 2, fill: '#c3cbce' });
  });
  return { markup: markup.join(''), bodies };
}
