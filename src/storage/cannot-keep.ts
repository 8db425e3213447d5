/** Why nothing can be kept, in a sentence. */
export class CannotKeep extends Error {
  /** Whether this machine has no SQLite at all. */
  readonly withoutSqlite: boolean;
  constructor(sentence: string, options: ErrorOptions & { readonly withoutSqlite?: boolean } = {}) {
    super(sentence, options);
    this.withoutSqlite = options.withoutSqlite ?? false;
  }
}
