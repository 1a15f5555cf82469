/**
 * A new entry for a folder of that name. What stands between ‹ and › is a blank with an example in it; `blank-left` reports each until it is
 * filled or its line is gone. With every blank filled as the example shows, the entry has no finding that is an error.
 */
export function entryTemplate(slug: string): string {
  return TEMPLATE.replace('SLUG', () => slug);
}

const TEMPLATE = `---
# Teardown "SLUG". Fill the blanks between ‹ and ›, or take their lines out. Lines that begin with # are for you alone.
# A value may say how it is known with its last word: printed, marked, measured, datasheet, assumed.
title: ‹One sentence that says what is worth knowing›
summary: ‹Power, ports and topology in a sentence or two›
status: draft                       # published, together with a line "published: 2026-03-14", when it is ready
device: { maker: ‹Larkmoor›, model: ‹LM-Q100›, kind: ‹wall charger›, released: ‹2026-01›, price: ‹62 USD› }
sample: { obtained: ‹bought at retail›, lot: "‹2551›" }     # digits alone go in quotes

nameplate:                          # as printed
  input: ‹100-240 V~ 50/60 Hz 1.8 A›
  output: ‹100 W max›
  total: ‹100 W›

body:
  size: ‹68 × 52 × 29 mm ± 0.3 mm›
  mass: ‹187 g ± 1 g›
  basis: cased                      # or board
  prongs: ‹folded›                  # folded, removed, included, none

ports:                              # by the names on the case
  C1:
    connector: USB-C
    power: ‹100 W›
    offers: [‹5 V 3 A›, ‹9 V 3 A›, ‹15 V 3 A›, ‹20 V 5 A›, ‹PPS 3.3–21 V 5 A›]    # or the words that the tester shows
    read through: marked cable
  C2: { same as: C1, power: ‹65 W›, offers: [‹5 V 3 A›, ‹9 V 3 A›, ‹20 V 3.25 A›] }

sharing:                            # leave it out where there is one port
  total: ‹100 W›
  evidence: ‹measured›
  allocations:
    C1: ‹100 W›
    C2: ‹65 W›
    C1 + C2: ‹65 W + 30 W›          # ports that share one power: C1 + (C2 + A1): 45 W + 15 W
  on new plug: ‹drops›              # keeps, dips, drops, not tested

stages:                             # in the order power flows, under names of your own
  input: input filter
  bridge: rectifier
  pfc: { is: boost PFC, mode: ‹critical conduction›, bus: ‹392 V measured› }
  main: { is: LLC half bridge, turns: ‹35:4:4›, output: ‹22.5 V measured› }     # turns not counted: turns ratio: "8.75 : 1"
  out C1: { is: buck, feeds: [C1] }
  out C2: { same as: out C1, feeds: [C2] }

parts:                              # by stage; "role, rating", or { role: …, rating: … } with maker, number, marking, package
  input:
    F1: fuse, ‹T3.15 A 250 VAC›
    CX1: X capacitor, ‹0.33 µF X2 310 VAC›
    varistor: ‹absent›              # looked for and not there; unknown where you could not see
  bridge:
    BD1: bridge rectifier, ‹600 V 4 A›
  pfc:
    Q1: { role: switch, rating: "‹700 V, 140 mΩ›", package: ‹DFN 8×8›, technology: ‹GaN› }
    C5: { role: bulk capacitor, rating: ‹120 µF 420 V 105 °C› }
  main:
    Q2, Q3: { role: switch, rating: "‹650 V, 210 mΩ›" }
    T1: transformer
    Q5, Q6: { role: synchronous rectifier, rating: "‹60 V, 3.1 mΩ›" }
    C21: output capacitor, ‹470 µF 25 V polymer›
  out C1:
    Q9, Q10: { role: switch, rating: "‹40 V, 6 mΩ›" }
    U5: { role: protocol controller, marking: "‹PX88 2549›" }

insulation:
  barrier: { between: primary and secondary, clearance: ‹6.2 mm›, creepage: ‹7.6 mm› }

measurements:
  efficiency:
    - { port: C1, line: ‹230 V 50 Hz›, output: ‹20 V›, at: connector, points: { 10 %: ‹86.4 %›, 25 %: ‹90.1 %›, 50 %: ‹92.0 %›, 75 %: ‹92.3 %›, 100 %: ‹92.1 %› } }
    # Several ports at once: - { port: C1 + C2, line: 230 V, output: 20 V + 9 V, at: connector, points: { 50 %: "20.03 V 0.9 A + 8.99 V 0.5 A, 25.4 W", 100 %: not sustained } }
  standby: { 230 V: ‹42 mW› }
  ripple: { 20 V: ‹92 mV› }
  thermal: { case top: ‹62 °C› }

# logs:
#   full load: { file: c1-100w.csv, columns: { time: "t (s)", voltage: U(V), current: Ch2 in mA }, port: C1, ambient: 24 °C }

# photos:
#   - { file: board-top.jpg, alt: What can be seen, callouts: { Q1: B4 } }

discharged: { method: ‹2.2 kΩ 10 W resistor with insulated leads›, voltage: ‹0.4 V› }
powered open: no
---

What is worth knowing first, with the number in front.
`;
