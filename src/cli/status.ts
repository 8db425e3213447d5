/** A line that is written over again and again, on a terminal alone. */
export function statusOn(stream: NodeJS.WriteStream): { readonly show: (text: string) => void } {
  if (!stream.isTTY) return { show: () => undefined };
  return { show: (text) => void stream.write(`\r\u001b[2K${text}`) };
}
