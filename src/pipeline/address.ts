/** Whether a folder name is an address as it stands: lower-case letters and digits with single hyphens between. */
export function isAddress(name: string): boolean {
  return /^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(name);
}

/** The address that a name would have: `65.5W-unit` becomes `65-5w-unit`, so that 65.5 W and 655 W stay apart. */
export function addressOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{Mark}+/gu, '')
    .toLowerCase();
  return plain.replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '');
}
