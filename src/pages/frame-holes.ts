/** Where something that follows from the sheets is filled into what the site generator made once: a comment that no page needs. */
export function hole(name: string): string {
  return `<!--seamline:${name}-->`;
}

const HOLE = /<!--seamline:([a-z-]+)-->/;

/** Fills every hole of a frame. Throws for one that nothing is given for: a slip of the program, which must stop the build. */
export function fillHoles(frame: string, given: Readonly<Record<string, string>>): string {
  return frame
    .split(HOLE)
    .map((piece, index) => {
      if (index % 2 === 0) return piece;
      const filling = given[piece];
      if (filling === undefined) throw new Error(`Nothing is given for the place "${piece}" of a page`);
      return filling;
    })
    .join('');
}
