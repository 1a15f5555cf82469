/** What a field case is met by: a test or a rule's example that holds this text. */
export interface CoveredBy {
  readonly file: string;
  readonly holds: string;
}

/** One case collected from the field: P facts of adapters, W publishing, Q questions of readers, C cautions. */
export interface FieldCase {
  readonly id: string;
  readonly about: string;
  readonly by: readonly CoveredBy[];
}

const VALUES = 'tests/checks/field-values.test.ts';
const PROSE = 'tests/markdown/render-prose.test.ts';
const BUILT = 'tests/site/built-pages.test.ts';
const PHOTOS = 'tests/pipeline/photo-step.test.ts';
const ADDRESSED = 'tests/site/addressed-site.test.ts';

function covered(id: string, about: string, ...tests: readonly (readonly [file: string, holds: string])[]): FieldCase {
  return { id, about, by: tests.map(([file, holds]) => ({ file, holds })) };
}

function example(id: string, about: string, ...rules: readonly string[]): FieldCase {
  return { id, about, by: rules.map((rule) => ({ file: `src/checks/examples/${rule}.md`, holds: `finding: ${rule}` })) };
}

/** Every collected case. */
export const FIELD_CASES: readonly FieldCase[] = [
  covered('P01', 'm and M of an on-resistance are never folded', [VALUES, '700V/140Mohm is an error that names m']),
  covered('P02', 'words for the ohm that stand close to the number', ['tests/units/more-spellings.ts', "'140 mOhm'"]),
  covered('P04', 'a number is read to its end or not at all', ['tests/units/spellings.ts', "'4R7x9'"]),
  covered(
    'P05',
    'a space before the prefix, and a number without unit',
    ['tests/units/spellings.ts', "'4.7 k'"],
    ['tests/units/spellings.ts', 'unit missing'],
  ),
  covered('P07', 'both code points of micro and of ohm', ['tests/corpus/search.test.ts', "'0.47\\u03BCF'"]),
  covered('P08', 'a slipped point in the input current', [VALUES, '16 A at 100 V is 24.6 times 65 W']),
  covered('P10', 'label currents rounded to two digits', ['tests/usb-pd/read-offers.test.ts', "'12V 1.67A', 20.04"]),
  {
    id: 'P11',
    about: 'density in the wrong unit',
    by: [{ file: 'src/checks/examples/claimed-density-plausible.md', holds: 'value: 22.9 W/cm³ # finding: claimed-density-plausible' }],
  },
  covered(
    'P12',
    'density of a board beside density in a case',
    ['tests/published/reference-designs.test.ts', '25.56 W/in³'],
    ['tests/corpus/sheet-ranks.test.ts', 'a bare board is not set against cases'],
  ),
  example('P14', 'the same set of ports with two divisions', 'same-set-twice'),
  covered(
    'P15',
    'one pool of two ports is not counted twice',
    ['src/checks/examples/pool-counted-as-each.md', 'finding: pool-counted-as-each'],
    ['tests/entry/read-sharing.test.ts', "'C2+A1 15'"],
  ),
  covered(
    'P17',
    'maxima that add up to more than the total',
    ['src/checks/examples/assured-sum-above-total.md', 'finding: assured-sum-above-total'],
    ['tests/reference-designs/sharing-policies.test.ts', '37.5'],
  ),
  covered('P18', 'a new plug interrupts the others, or nobody tested it', [
    'tests/render/share-answers.test.ts',
    'interrupted when a device is added: not tested.',
  ]),
  covered('P19', 'order of a source’s offers', ['tests/usb-pd/judge-offers.test.ts', "'9V3A, 5V3A', 'first-offer', '5 V must be first'"]),
  covered('P20', 'two programmable ranges on one port', ['tests/usb-pd/supplies.test.ts', 'PPS 3.3-5.9V 3A; 3.3-11V 1.8A']),
  covered('P21', 'steps of a programmable current', ['tests/usb-pd/read-offers.test.ts', '3.33 A is not a multiple of 0.05 A']),
  covered(
    'P24',
    'what a system reports is not a measurement',
    ['tests/derived/efficiency/efficiency-figures.test.ts', 'what the device reports of itself is shown and not judged'],
    ['tests/derived/heat/sustained-runs.test.ts', 'what a system reports is none'],
    ['tests/derived/reported-and-measured.test.ts', '5 V 3 A reported are 15 W, and 60 W flow'],
    ['src/checks/examples/reported-against-measured.md', 'finding: reported-against-measured'],
  ),
  covered(
    'P25',
    'the cable limits what arrives',
    ['tests/usb-pd/supplies.test.ts', 'gets 60 W through a 3 A cable'],
    ['src/checks/examples/current-without-cable.md', 'finding: current-without-cable'],
  ),
  example('P27', 'trade names of protocols, and the old data-line scheme on a C port', 'data-line-protocol', 'usb-pd-without-list'),
  covered('P28', 'spare voltage of the bulk capacitor', [
    VALUES,
    '400 V on 264 V mains is cautioned, 450 V is not, 350 V is above its rating',
  ]),
  example('P29', 'a film part without an X class across the line', 'x-capacitor-class'),
  covered('P30', 'an ordinary capacitor across the barrier', [
    'tests/checks/mains-safety.test.ts',
    'two Y2 in series are right with a note; a single Y2 is a caution',
  ]),
  covered('P31', 'the distance between the two sides', [
    'tests/checks/mains-safety.test.ts',
    '0.6 mm through air is an error, 7.6 mm is enough, 60 mm asks whether the unit is right',
  ]),
  covered(
    'P32',
    'touch current from the capacitance across the barrier, and 80 V on an open meter',
    ['tests/checks/mains-safety.test.ts', '2.2 nF give 0.219 mA'],
    ['tests/derived/touch-voltages.test.ts', 'are told as a voltage into an open meter, not touch current'],
  ),
  covered('P34', 'charge left on the pins, each rule by name', [
    'tests/derived/insulation-and-heat.test.ts',
    '128.9 V after 1 s and 44.5 V after 2 s, each rule by its own time',
  ]),
  covered(
    'P35',
    'a can that holds less than it is marked',
    ['src/checks/examples/marked-against-measured.md', 'finding: marked-against-measured'],
    ['tests/checks/marked-against-measured.test.ts', '6800 µF printed and 2200 µF measured: −67.6 %, outside 20 % tolerance'],
    ['tests/checks/marked-against-measured.test.ts', 'marked and not measured has no verdict'],
  ),
  covered(
    'P37',
    'cell energy against what the outputs give',
    [VALUES, '5,500 mAh at 5 V of 37 Wh passes, 7,400 mAh does not'],
    ['tests/checks/conversion-of-charges.test.ts', '55 % is 5500 of 10 000 mAh; the energies are 27.5 of 37 Wh, 74.3 %'],
  ),
  covered(
    'P39',
    'efficiency without its conditions',
    ['src/checks/examples/efficiency-conditions.md', 'finding: efficiency-conditions'],
    [VALUES, 'a mains adapter above 97 % is asked for its stage'],
  ),
  covered(
    'P40',
    'power that does not last',
    ['tests/derived/heat/sustained-runs.test.ts', '100 W, then 65 W from 12 min to 30 min'],
    ['tests/derived/heat/sustained-runs.test.ts', 'a test shorter than 30 minutes: sustained not shown'],
    ['src/checks/examples/power-does-not-last.md', 'finding: power-does-not-last'],
  ),
  covered(
    'P43',
    'a recall stands above the sheet, in the register, in the search and in the feed',
    [ADDRESSED, 'says when a device is recalled'],
    [ADDRESSED, 'stands in the register and in the search'],
    ['tests/entry/read-entry.test.ts', 'recall: {'],
  ),

  covered('W01', 'one tilde does not strike through', [PROSE, "'100~240V~50/60Hz'"], [PROSE, 'two tildes strike through, one does not']),
  covered('W03', 'a star between digits stays', [PROSE, 'stars between digits are kept and remarked on']),
  covered('W05', 'quotes and dashes stay as written', [PROSE, '2.9" x 2.9"']),
  covered(
    'W06',
    'originals and positions of photos are not published',
    [PHOTOS, 'stand upright, hold no metadata'],
    [PHOTOS, 'one with a place in it, an original and a huge one are faults by their names'],
  ),
  covered('W07', 'photos keep their orientation', [PHOTOS, 'Turned by a quarter']),
  covered(
    'W08',
    'two files with one address',
    ['tests/pipeline/scan-content.test.ts', 'two folders with one address are both named'],
    ['tests/pipeline/scan-content.test.ts', "'65.5W-unit', '65-5w-unit'"],
  ),
  covered(
    'W10',
    'a renamed entry without a redirect',
    ['tests/pipeline/check-corpus.test.ts', 'has no redirect'],
    ['tests/pipeline/build-site.test.ts', 'is stopped when one of them is lost'],
  ),
  covered('W12', 'a draft leaks nowhere', [ADDRESSED, 'has its words, its maker, its part and its address in no file of the site']),
  covered(
    'W14',
    'every link carries the base path',
    ['tests/site/base-path.test.ts', 'links and loads nothing outside its base path'],
    ['tests/pipeline/check-output.test.ts', 'under a base path every link carries it'],
    [ADDRESSED, 'carries the base path'],
  ),
  covered('W15', 'what the search loads lies under the base path', [
    'tests/site/base-path.test.ts',
    'links and loads nothing outside its base path',
  ]),
  covered(
    'W16',
    'search finds values and halves of part numbers',
    ['tests/corpus/search.test.ts', "'0.47uF'"],
    ['tests/corpus/search.test.ts', "'4k7'"],
  ),
  covered(
    'W18',
    'whole addresses and lasting ids in the feed',
    [ADDRESSED, 'every address in it is whole and under the base path'],
    [ADDRESSED, 'keeps the id that an entry had under its first name'],
  ),
  covered('W19', 'no page is wider than a phone', [BUILT, 'is no wider than a phone on any page']),
  covered('W20', 'figures are readable in both schemes', [BUILT, 'has no accessibility fault in the']),
  covered(
    'W21',
    'values that YAML would change',
    ['tests/entry/parse-frontmatter.test.ts', 'keeps texts that YAML 1.1 would turn into something else'],
    ['tests/entry/parse-frontmatter.test.ts', 'rating: 420V #120uF'],
    ['src/entry/examples/unquoted-number.md', 'finding: unquoted-number'],
  ),
  covered(
    'W23',
    'one bad entry among fifty',
    ['tests/pipeline/prepare.test.ts', 'one broken entry among fifty'],
    ['tests/render/render.test.ts', 'make a page of their own for an entry that cannot be shown'],
  ),
  covered(
    'W25',
    'builds that stay small and are not done twice',
    ['tests/pipeline/prepare.test.ts', 'parses nothing when nothing changed'],
    ['bench/bench.ts', 'memory'],
  ),
  covered('W26', 'a bar inside a table cell', [PROSE, 'a row with more cells than its heading is an error']),

  covered('Q01', 'which port for the laptop', ['tests/render/plug-rows.test.ts', 'sends one device to the port with the most power alone']),
  covered('Q02', 'what changes when a phone is added', [
    'tests/render/share-answers.test.ts',
    'the largest fall, and that nobody tested the interruption',
  ]),
  covered('Q03', 'listed, measured and sustained apart', [
    'tests/tables/bench-tables.test.ts',
    'listed, measured and sustained stand apart; what was not tested says so',
  ]),
  covered('Q04', 'which cable', ['tests/usb-pd/supplies.test.ts', 'a cable decides']),
  covered('Q05', 'a larger charger on a smaller laptop', ['tests/usb-pd/supplies.test.ts', 'a 65 W laptop that needs 20 V']),
  example('Q07', 'never a bare yes on safety', 'safe-as-verdict'),
  covered('Q08', 'a tingle explained by the computed current', ['src/checks/examples/y-capacitor-current-high.md', 'A tingle']),
  covered('Q09', 'margin of the capacitor', ['tests/derived/stress.test.ts', "'400 V', '93.3'"]),
  covered('Q11', 'energy at the outputs against the cells', [VALUES, '5,500 mAh at 5 V of 37 Wh passes']),
  example('Q12', 'whether a bank may fly needs its energy', 'capacity-needs-voltage'),
  covered(
    'Q17',
    'how hot, as a rise over the air, and none without it',
    ['tests/derived/heat/hot-spots.test.ts', '71 °C in air of 24 °C is a rise of 47 K'],
    ['tests/derived/heat/hot-spots.test.ts', 'without the air temperature there is no rise, and the sheet says why'],
  ),
  covered('Q18', 'volume and density in both units', [
    'tests/published/reference-designs.test.ts',
    'has 1.828 W/cm³ and more than the printed 29.8 W/in³',
  ]),

  covered('C01', 'a unit is charged until a meter says otherwise', [
    'src/checks/examples/stored-charge-unproven.md',
    'finding: stored-charge-unproven',
  ]),
  covered(
    'C02',
    'discharge through a resistor, in known time',
    ['src/formulas/capacitor/rc-discharge-time.ts', "printed: '0.33 s'"],
    ['src/formulas/capacitor/rc-voltage-after.ts', "printed: '14.9 V'"],
  ),
  example('C03', 'never a screwdriver', 'screwdriver-discharge'),
  covered('C04', 'a meter does not discharge', ['src/formulas/capacitor/rc-discharge-time.ts', "printed: '1499 s'"]),
  example('C06', 'no power on an opened unit', 'powered-open'),
  example('C07', 'an isolating transformer does not make it safe', 'isolation-claims'),
  covered('C09', 'a variable transformer does not isolate', ['src/checks/examples/isolation-claims.md', 'variac']),
  example('C11', 'charge on the pins after unplugging', 'x-capacitor-discharge'),
  covered(
    'C12',
    'lithium cells',
    ['src/checks/examples/cells-opened.md', 'finding: cells-opened'],
    [BUILT, 'Never pierce, bend, heat or short a cell'],
  ),
  covered(
    'C15',
    'a look inside is no test',
    [BUILT, 'carries its caution on every teardown'],
    ['src/render/caution-box.ts', 'A look inside is not a safety test'],
  ),
];
