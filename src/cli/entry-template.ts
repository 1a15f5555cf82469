/** An entry to fill in: it checks clean as it is, and every line of it is one that most teardowns need. */
export function entryTemplate(): string {
  return TEMPLATE;
}

const TEMPLATE = `---
# Write values as the trade writes them: 120 µF 420 V, 68 × 52 × 29 mm ± 0.3 mm, 100-240 V~ 50/60 Hz 1.8 A.
# How a value is known stands as its last word: measured, printed, marked, datasheet or assumed.
# Lines that begin with # are not read: take the # away where you have the fact, delete the line where you do not.
title: Untitled teardown
status: draft                # published, when it may be seen
# published: 2026-03-14      # the day of publication
# summary: One or two sentences for lists, the number first.
device: { maker: Unnamed maker, name: Unnamed adapter, kind: wall charger }   # add model: "…", released: 2026-01, price: 62 USD
# sample: { obtained: bought at retail, lot: "2551", firmware: "1.4" }        # digits in quotes, so that they stay as printed

# nameplate:                 # as printed
#   input: 100-240 V~ 50/60 Hz 1.8 A
#   output: 5 V⎓3 A, 9 V⎓3 A
#   total: 100 W

# body:
#   size: 68 × 52 × 29 mm ± 0.3 mm
#   mass: 187 g ± 1 g
#   basis: cased             # or board
#   prongs: folded           # removed, included, none

# ports:
#   C1:
#     connector: USB-C
#     power: 100 W
#     offers: [5 V 3 A, 9 V 3 A, 15 V 3 A, 20 V 5 A, PPS 3.3–21 V 5 A]        # or the words a tester shows: 0x0A01912C …
#   C2: { same as: C1 }

# sharing:                   # the power each port gets for each set of ports in use
#   total: 100 W
#   alike: [[C1, C2]]
#   evidence: printed
#   allocations:
#     C1: 100 W
#     C1 + C2: 50 W + 50 W

# stages:                    # in the order power flows
#   input: input filter
#   bridge: rectifier
#   main: { is: flyback, mode: quasi-resonant, turns: 42:6:7, feeds: [C1, C2] }

# parts:                     # by stage, reference first; or parts: parts.csv beside this file
#   input:
#     F1: { role: input fuse, rating: T3.15 A 250 VAC }
#   bridge:
#     C1: { role: bulk capacitor, maker: Unnamed, rating: 120 µF 420 V 105 °C }
#   main:
#     Q1: { role: switch, technology: GaN, rating: "700 V, 140 mΩ", package: DFN 8×8 }

# answers:                   # your reasons where a finding is right and you are too; they are published
#   - { to: capacitor-voltage-margin, at: C1, because: the rail was never above 22.6 V in any test }
---

Write here what the numbers do not say. Computed values are quoted by name, as in \\:value[density], parts as in \\:part[Q1],
and derived tables are placed with a line of their own such as \\:\\:table{port-share}; take each \\ away to use them.
`;
