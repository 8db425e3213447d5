import fc from "fast-check";
import type { Change, KeptShow, KeptWork } from "../../src/show/index.ts";
import { designChange, factsChange, practiceChange, showChange } from "../../src/show/index.ts";

/** A work whose lengths are texts of every sort, none of which a database may round. */
export const work = (id: string, title = `Work ${id}`): KeptWork => ({
  id,
  title,
  maker: "Ines Okonedo-Vale",
  design: {
    unit: "in",
    print: {
      width: "8 1/2",
      height: "11",
      image: { left: "3/4", top: 0.75, width: "7 1/128", height: "9½" },
    },
    outer: { width: "11", height: "14" },
  },
});

export const SHOW: KeptShow = {
  format: "margent-show",
  version: 1,
  name: "Slack Water",
  room: "Tidewater Print Room",
  date: "2026-12-14",
  practice: { unit: "in", overlap: "1/8 in" },
  stock: {
    sheets: [
      { name: "32 x 40", width: "32 in", height: 40, cost: 11.5, board: "4-ply white rag" },
      { name: "offcut 14", width: "13 1/2 in", height: "20 in", copies: 1 },
    ],
  },
  works: ["a", "b", "c", "d", "e"].map((id) => work(id)),
};

const texts = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom("1/128 in", "25.4 mm", "\u0000", "Ō’Malley", "%_\\", '{"a":1}'),
);

/** A change drawn by itself; what it is made upon is known only when it is made. */
export type Wish = (show: KeptShow, fresh: string) => Change | null;

const nth = (show: KeptShow, at: number): KeptWork | undefined =>
  show.works[at % Math.max(1, show.works.length)];
const place = fc.nat({ max: 9 });

/** Wishes of every kind of change. */
export const wishes: fc.Arbitrary<Wish> = fc.oneof(
  fc.tuple(place, fc.option(texts, { nil: undefined })).map(
    ([at, hold]): Wish =>
      (show) => {
        const one = nth(show, at);
        if (one === undefined) return null;
        const { hold: _was, ...rest } = one.design;
        return designChange(one.id, one.design, hold === undefined ? rest : { ...rest, hold }, "hold");
      },
  ),
  fc.tuple(place, fc.option(texts, { nil: undefined })).map(
    ([at, notes]): Wish =>
      (show) => {
        const one = nth(show, at);
        return one === undefined ? null : factsChange(one, { notes }, "notes");
      },
  ),
  fc.tuple(place, texts).map(
    ([at, title]): Wish =>
      (show, fresh) => ({
        kind: "add",
        work: { ...work(fresh), title },
        at: at % (show.works.length + 1),
        said: "added",
      }),
  ),
  place.map(
    (at): Wish =>
      (show) => {
        const one = nth(show, at);
        return one === undefined
          ? null
          : { kind: "remove", work: one, at: show.works.indexOf(one), said: "off" };
      },
  ),
  fc.tuple(place, place).map(
    ([at, to]): Wish =>
      (show) => {
        const one = nth(show, at);
        if (one === undefined) return null;
        return {
          kind: "move",
          work: one.id,
          from: show.works.indexOf(one),
          to: to % show.works.length,
          said: "moved",
        };
      },
  ),
  texts.map(
    (room): Wish =>
      (show) =>
        showChange(show, { room }, "room"),
  ),
  texts.map(
    (overlap): Wish =>
      (show) =>
        practiceChange(show.practice ?? {}, { ...show.practice, overlap }, "overlap"),
  ),
);

/** A value as JSON holds it: without keys that are undefined. */
export const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;
