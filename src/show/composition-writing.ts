import type { StepName } from "../assembly/index.ts";
import {
  inBytes,
  type Length,
  type Pen,
  Repeated,
  type Ruler,
  type Rounding,
  writeExact,
  writeLength,
  writeMillimetres,
} from "../lengths/index.ts";
import { type Ink, type Language, sayStepName, type Speech } from "../words/index.ts";

/** What writes the compositions of one ruler: lengths and names that come again are worked out once. */
export interface Writing {
  readonly pen: Pen;
  readonly speech: Speech;
  /** A length as it leaves: a place, to the nearest. */
  readonly at: (length: Length) => void;
  /** A maximum, rounded down. */
  readonly most: (length: Length) => void;
  /** The pieces of a sum. */
  readonly ink: Ink;
  /** A step's object up to its sum. */
  readonly stepBegins: (name: StepName, mats: number) => void;
}

/** More rulers than a studio has; past it their tables are made anew. */
const MOST_RULERS = 32;

/** One pen for many compositions, whatever their rulers. */
export class Writings {
  private readonly rulers = new Map<number, Writing>();
  private readonly pen: Pen;
  private readonly language: Language;
  private readonly stepBegins: Writing["stepBegins"];

  constructor(pen: Pen, language: Language) {
    this.pen = pen;
    this.language = language;
    this.stepBegins = stepBeginner(pen, language);
  }

  of(ruler: Ruler): Writing {
    const key = ruler.unit === "in" ? ruler.graduation : -ruler.graduation;
    const known = this.rulers.get(key);
    if (known !== undefined) return known;
    if (this.rulers.size === MOST_RULERS) this.rulers.clear();
    const made = this.made(ruler);
    this.rulers.set(key, made);
    return made;
  }

  private made(ruler: Ruler): Writing {
    const { pen, language } = this;
    const rounded = (rounding: Rounding): Repeated =>
      new Repeated(pen, (length) => {
        pen.piece(MM);
        writeMillimetres(pen, length);
        pen.piece(TEXT);
        writeLength(pen, length, ruler, rounding);
        pen.piece(LENGTH_ENDS);
      });
    const at = rounded("nearest");
    const most = rounded("down");
    const exact = new Repeated(pen, (length) => writeExact(pen, length, ruler.unit));
    return {
      pen,
      speech: { ruler, language },
      at: (length) => at.write(length),
      most: (length) => most.write(length),
      ink: { text: (piece) => pen.text(piece), exact: (length) => exact.write(length) },
      stepBegins: this.stepBegins,
    };
  }
}

const MM = inBytes('{"mm":');
const TEXT = inBytes(',"text":"');
const LENGTH_ENDS = inBytes('"}');

/** Names of steps are few, and each is the same object at every work. */
function stepBeginner(pen: Pen, language: Language): Writing["stepBegins"] {
  const single = new WeakMap<StepName, Uint8Array>();
  const several = new WeakMap<StepName, Uint8Array>();
  return (name, mats) => {
    const known = mats === 1 ? single : several;
    let bytes = known.get(name);
    if (bytes === undefined) {
      // A name holds words of ours and numbers, no sign that JSON would write otherwise.
      bytes = inBytes(`{"name":"${sayStepName(name, mats, language)}","sum":"`);
      known.set(name, bytes);
    }
    pen.piece(bytes);
  };
}
