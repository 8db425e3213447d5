/** The item at an index that is known to exist. Throws RangeError where it does not. */
export function at<T>(list: ArrayLike<T>, index: number): T {
  const item = list[index];
  if (item === undefined) throw new RangeError(`nothing at ${index} of ${list.length}`);
  return item;
}
