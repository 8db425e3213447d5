/** With a capital first, as a sentence begins. */
export const sentence = (text: string): string => text.charAt(0).toLocaleUpperCase("en") + text.slice(1);

/** No line is broken here. */
export const NBSP = "\u00a0";
