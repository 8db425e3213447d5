import type { WallDocument } from "../../show/index.ts";
import { type BlankName, wallBlankWords } from "../../words/page.ts";
import { FieldBlank, FieldFault, type FieldProps } from "../blanks/field-blank.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import type { KeptShow } from "../state/change.ts";
import { pointed } from "../state/draft.ts";
import { withWall } from "./edits.ts";
import { followWalls, keepWalls, putBackWalls } from "./editing.ts";
import { wallField, type WallSaid } from "./fields.ts";

interface Props {
  readonly show: KeptShow;
  readonly index: number;
  readonly said: WallSaid;
}

/** The parts of the drawing that a blank of the wall speaks of, by the names of their groups. */
export function wallParts(blank: string): readonly string[] {
  const [, of = "", index = ""] = blank.split(".");
  if (of === "avoid") return [`avoid-${index}`];
  if (of === "eyeLine") return ["eye-line"];
  if (of === "levelLine" || of === "from") return ["level-line"];
  if (of === "gap") return Array.from({ length: 30 }, (_, gap) => `gap-${gap + 1}`);
  return of === "centre" || of === "centreAt" ? ["gap-first", "gap-last"] : [];
}

/** A sentence of the wall with its blanks. */
export function WallSentence(
  props: Props & { readonly sentence: string; readonly label: string; readonly class: string },
) {
  return (
    <Sentence
      class={props.class}
      label={props.label}
      sentence={props.sentence}
      blank={(name) => <FieldBlank key={name} {...fieldProps(name, props)} />}
      fault={(name) => <FieldFault key={name} {...fieldProps(name, props)} />}
    />
  );
}

function fieldProps(name: BlankName, { show, index, said }: Props): FieldProps<WallSaid, WallDocument> {
  const walls = (wall: WallDocument) => withWall(show.walls ?? [], index, () => wall);
  const parts = wallParts(name);
  return {
    name,
    field: wallField(name),
    said,
    words: wordsOf(name, said),
    ruler: said.request.ruler,
    washed: pointed.value !== null && parts.includes(pointed.value),
    controls: parts
      .slice(0, 2)
      .map((part) => `wall-${part}`)
      .join(" "),
    follow: (wall) => followWalls(show, wall === null ? null : walls(wall), index),
    keep: (wall, what) => keepWalls(show, walls(wall), what, name),
    putBack: () => putBackWalls(name),
  };
}

function wordsOf(blank: string, { wall }: WallSaid) {
  const [, of = "", index = ""] = blank.split(".");
  const named = of === "avoid" ? wall.avoid?.[Number(index)] : wall.seats?.[Number(index)];
  return wallBlankWords(blank, named?.name ?? "");
}
