interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** For each frame its place in the order of hanging. */
export function orderPlaces(order: readonly number[]): readonly number[] {
  const places: number[] = [];
  order.forEach((frame, turn) => {
    places[frame] = turn;
  });
  return places;
}

/** The frame whose place a frame takes that is held at a point: the one whose middle is nearest. */
export function placeUnder(
  at: { readonly x: number; readonly y: number },
  boxes: readonly Box[],
  otherwise: number,
): number {
  let [best, least] = [otherwise, Number.POSITIVE_INFINITY];
  boxes.forEach(({ left, right, top, bottom }, index) => {
    const away = Math.hypot(at.x - (left + right) / 2, at.y - (top + bottom) / 2);
    if (away < least) [best, least] = [index, away];
  });
  return best;
}
