/** A command line that cannot be carried out as written. The message says what would be. */
export class WrongUsage extends Error {
  override readonly name = 'WrongUsage';
}
