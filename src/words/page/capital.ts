/** A sentence begins with a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What begins with a capital, said within a sentence: an "I" further on keeps its own. */
export const inSentence = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
