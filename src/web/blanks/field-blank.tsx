import { exactFigure, type Length, printExact, type Ruler } from "../../lengths/index.ts";
import { type BlankName, type BlankWords, lengthLabel, lengthOtherWay, PAGE } from "../../words/page.ts";
import { lit, setUnread, unread } from "../state/draft.ts";
import { language } from "../state/session.ts";
import { Choice } from "./choice.tsx";
import { meantBy } from "./fault.ts";
import { faultSays } from "./fault-says.ts";
import type { DocumentField } from "./field.ts";
import { Exactly } from "./figure.tsx";
import { LengthBlank } from "./length-blank.tsx";
import { NumberBlank } from "./number-blank.tsx";
import { saidLength } from "./set-length.ts";
import { TextBlank } from "./text-blank.tsx";

export interface FieldProps<Said, Next> {
  readonly name: BlankName;
  readonly field: DocumentField<Said, Next> | null;
  readonly said: Said;
  readonly words: BlankWords;
  readonly ruler: Ruler;
  readonly washed?: boolean;
  /** The parts of the drawing that it speaks of, by their ids. */
  readonly controls?: string;
  /** The drawing follows; null while the text cannot be read. */
  readonly follow?: (next: Next | null) => void;
  /** False where the document cannot take it. */
  readonly keep: (next: Next, said: string) => boolean;
  readonly putBack: () => void;
}

const light = (name: BlankName) => (on: boolean) => {
  if (on) lit.value = name;
  else if (lit.value === name) lit.value = null;
};

/** The control that a field's kind asks for, in a sentence. */
export function FieldBlank<Said, Next>(props: FieldProps<Said, Next>) {
  const { name, field, said, words, ruler, washed = false, follow, keep } = props;
  const common = { fault: unread.value.get(name), washed, light: light(name), putBack: props.putBack };
  switch (field?.kind) {
    case undefined:
      return null;
    case "length": {
      const value = field.read(said);
      const write = (to: Length): Next => field.write(said, printExact(to, ruler.unit), to);
      return (
        <LengthBlank
          {...common}
          blank={name}
          label={lengthLabel(words.label, exactFigure(value, ruler.unit).unit, language.value)}
          asks={words.label}
          value={value}
          ruler={ruler}
          unit
          controls={props.controls ?? ""}
          otherWay={(now) => lengthOtherWay(now, ruler.unit)}
          follow={(now) => follow?.(now === null ? null : write(now))}
          keep={(now) => keep(write(now), `${words.said} ${saidLength(now, ruler.unit)}`)}
          refuse={(found) => setUnread(name, found)}
        />
      );
    }
    case "number":
      return (
        <NumberBlank
          {...common}
          blank={name}
          label={words.label}
          value={field.read(said)}
          unit={field.unit}
          stride={field.step}
          follow={() => {}}
          keep={(now) => keep(field.write(said, now), `${words.said} ${now}`)}
          refuse={(found) => setUnread(name, found)}
        />
      );
    case "choice": {
      const options = field.options(said);
      const option = (key: string): string => options.find((one) => one.key === key)?.words ?? key;
      return (
        <Choice
          id={`blank-${name}`}
          label={words.label}
          options={options}
          value={field.read(said)}
          washed={washed}
          keep={(key) => keep(field.write(said, key), `${words.said}: ${option(key)}`)}
          light={light(name)}
        />
      );
    }
    case "text":
      return (
        <TextBlank
          id={`blank-${name}`}
          label={words.label}
          value={field.read(said)}
          unsaid={PAGE.notSaid}
          keep={(text) => keep(field.write(said, text), `${words.said}: ${text}`)}
        />
      );
  }
}

/** What is to be mended in a blank, with what may have been meant. */
export function FieldFault<Said, Next>({ name, field, said, words, ruler, keep }: FieldProps<Said, Next>) {
  const fault = unread.value.get(name);
  if (fault === undefined || field === null) return null;
  return (
    <span class="mend-here" id={`${name}-fault`}>
      {faultSays(fault)}
      {field.kind === "length" &&
        meantBy(fault, ruler.unit).map((length) => (
          <button
            key={length}
            type="button"
            onClick={() => {
              const next = field.write(said, printExact(length, ruler.unit), length);
              keep(next, `${words.said} ${saidLength(length, ruler.unit)}`);
              document.getElementById(`blank-${name}`)?.focus();
            }}
          >
            <Exactly length={length} inUnit={ruler.unit} />
          </button>
        ))}
    </span>
  );
}
