/** What the reviewer says of one picture. */
export interface PictureWords {
  readonly title: string;
  readonly alt: string;
}

/** The pictures of one device; a bottom view only where the other side of the board was photographed. */
export interface DevicePictures {
  readonly exterior: PictureWords;
  readonly top: PictureWords;
  readonly bottom?: PictureWords;
}

/** Titles and descriptions of every demo picture, by the folder name of its entry. */
export const PICTURE_WORDS: Readonly<Record<string, DevicePictures>> = {
  'crossgarth-bothy-45': {
    exterior: {
      title: 'As it came, socket side towards the window',
      alt: 'Dark flat power bank from above its socket edge: one USB-C and one USB-A opening in front, the printed ratings on the top.',
    },
    top: {
      title: 'Frame out, cells left, the one board right',
      alt: 'Two teal cells side by side and a narrow green board to their right with one large inductor, the two sockets at the right edge.',
    },
  },
  'fennimoor-deskway-100': {
    exterior: {
      title: 'The label is quieter than that of its sister',
      alt: 'Dark desktop block from above its front: three USB-C openings and one USB-A opening in a row, ratings printed on the top.',
    },
    top: {
      title: 'Component side, mains left, the slot under T1',
      alt: 'Green board from above: mains filter, boost inductor and a large can left of a milled slot, the transformer across it, outputs and four sockets right.',
    },
    bottom: {
      title: 'Solder side, turned over: mains right, ports left',
      alt: 'Solder side of the same board: the switches and the controller stand here, the bare band of the insulation runs from edge to edge.',
    },
  },
  'marlhythe-causeway-100': {
    exterior: {
      title: 'Before the seam was opened',
      alt: 'Dark desktop block from above its front: three USB-C openings and one USB-A opening, ratings and the class II symbol printed on the top.',
    },
    top: {
      title: 'Component side, power runs from left to right',
      alt: 'Green board from above: fuse, film capacitor and chokes at the left, the boost inductor and bulk can, the transformer over the slot, four sockets at the right edge.',
    },
    bottom: {
      title: 'Solder side, turned over: mains right, ports left',
      alt: 'Solder side of the board with the switches of boost stage and half bridge, the controller between them, and the output converters at the left.',
    },
  },
  'ostlewick-lantern-140': {
    exterior: {
      title: 'Prongs folded, ready for the saw',
      alt: 'White wall charger from above its port side: two folded blades in their recesses, four lines of output ratings, three USB-C openings and one USB-A.',
    },
    top: {
      title: 'Component side: two wound cores and a can on its side',
      alt: 'Green board from above: boost inductor and transformer under yellow tape, the bulk capacitor lying below them, Y capacitor and optocoupler across the slot, four sockets right.',
    },
    bottom: {
      title: 'Solder side, turned over: mains right, ports left',
      alt: 'Solder side: two bridges and the boost switch at the right, controller and half bridge in the middle, the bare insulation with its slot, the bucks at the left.',
    },
  },
  'skelderby-trine-65': {
    exterior: {
      title: 'Before the seam was cut',
      alt: 'White cube of a wall charger from above its port side: two folded blades, the small print about C2 and A, three openings in front.',
    },
    top: {
      title: 'The two boards opened like a book, tall parts up',
      alt: 'Two green boards side by side: mains filter and two cans on the left one; the potted transformer across the slot, polymer capacitors and three sockets on the right one.',
    },
    bottom: {
      title: 'The same two boards turned over',
      alt: 'Solder sides of the two boards: clamp and main switch with their controller on one, rectifier, bucks and port controllers beside the slot on the other.',
    },
  },
  'tillmere-nub-20': {
    exterior: {
      title: 'Pins sawn off, as it was measured',
      alt: 'Small white wall charger from above its port side: stumps of two round pins behind, five printed lines on the top, one USB-C opening in front.',
    },
    top: {
      title: 'The two boards opened like a book',
      alt: 'Two small green boards: fuse, choke and two cans on the left one, the transformer across the slot and the upright USB-C socket on the right one.',
    },
  },
  'wendlestone-fairlead-92': {
    exterior: {
      title: 'Tip left, sleeve and ports right',
      alt: 'Car charger on its side: brass tip and springs at the left, a metal sleeve with printed ratings, two USB-C openings one over the other at the right end.',
    },
    top: {
      title: 'Out of its sleeve, input left, ports right',
      alt: 'Long narrow green board from above: input capacitors and a large inductor with four small switches right of it, two USB-C sockets at the right edge.',
    },
  },
  'yarrowdene-stub-30': {
    exterior: {
      title: 'The whole of it, prongs folded',
      alt: 'Small white wall charger from above its port side: two folded blades, five printed lines on the top, one USB-C opening in front.',
    },
    top: {
      title: 'The two boards opened like a book',
      alt: 'Two small green boards: fuse, choke, two cans and the switch on the left one, the transformer across the slot, polymer cans and the upright USB-C socket on the right one.',
    },
  },
};
