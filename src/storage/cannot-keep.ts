/** Why nothing can be kept, in a sentence. */
export class CannotKeep extends Error {}
