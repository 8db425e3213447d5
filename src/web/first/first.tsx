import { useEffect, useRef, useState } from "preact/hooks";
import {
  type Length,
  mm,
  printExact,
  printLength,
  readLength,
  type Ruler,
  type Unit,
} from "../../lengths/index.ts";
import { DEFAULT_HABITS } from "../../show/index.ts";
import {
  type BlankName,
  blankWords,
  DRAWN,
  FIRST,
  FIRST_SENTENCE,
  lengthLabel,
  lengthOtherWay,
  PAGE,
  BEGINNING,
  sayBlankFault,
  sayNotAbove,
  unitOptions,
} from "../../words/page.ts";
import { Choice } from "../blanks/choice.tsx";
import { type BlankFault, meantBy } from "../blanks/fault.ts";
import { Exactly } from "../blanks/figure.tsx";
import { LengthBlank } from "../blanks/length-blank.tsx";
import { Sentence } from "../blanks/sentence.tsx";
import { TextBlank } from "../blanks/text-blank.tsx";
import { act, whenOpened } from "../later.tsx";
import { FileAct, LIST_FILES, SHOW_FILES } from "../file-act.tsx";
import { newShow, withIds } from "../state/kept-show.ts";
import { goTo } from "../state/route.ts";
import { language, openNew } from "../state/session.ts";
import { SheetDrawing } from "./sheet-drawing.tsx";

const Shows = whenOpened(({ Shows: it }) => it, true);

type Side = "sheetWidth" | "sheetHeight" | "imageWidth" | "imageHeight";
type Measures = Readonly<Record<Side, Length>>;

const FIRST_MEASURES: Readonly<Record<Unit, Measures>> = {
  in: measures("in", "8 1/2", "11", "7", "9 1/2"),
  mm: measures("mm", "210", "297", "170", "250"),
};

function measures(unit: Unit, ...texts: readonly [string, string, string, string]): Measures {
  const [sheetWidth, sheetHeight, imageWidth, imageHeight] = texts.map((text) => {
    const read = readLength(text, unit);
    return read.ok ? read.length : mm(100);
  });
  const otherwise = mm(100);
  return {
    sheetWidth: sheetWidth ?? otherwise,
    sheetHeight: sheetHeight ?? otherwise,
    imageWidth: imageWidth ?? otherwise,
    imageHeight: imageHeight ?? otherwise,
  };
}

/** Where a new show begins: one sentence, one act, three other ways; the drawing answers from the first word. */
export function First() {
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus({ preventScroll: true }), []);
  const [unit, setUnit] = useState<Unit>("in");
  const [said, setSaid] = useState<Measures>(FIRST_MEASURES.in);
  const [drafted, setDrafted] = useState<Measures | null>(null);
  const [faults, setFaults] = useState<Readonly<Partial<Record<BlankName, BlankFault>>>>({});
  const [name, setName] = useState("");
  const ruler: Ruler = DEFAULT_HABITS[unit].ruler;

  const keep = (side: Side, length: Length): boolean => {
    if (length <= 0) {
      setFaults({
        ...faults,
        [side]: { code: "refused", problem: { field: side, found: "0", wanted: { kind: "size" } } },
      });
      return false;
    }
    setSaid({ ...said, [side]: length });
    setDrafted(null);
    return true;
  };
  const refuse = (side: Side, fault: BlankFault | null): void => {
    if (fault === null && faults[side] === undefined) return;
    const { [side]: _, ...rest } = faults;
    setFaults(fault === null ? rest : { ...rest, [side]: fault });
  };

  const blank = (which: BlankName) => {
    if (which === "title") {
      return (
        <TextBlank
          key={which}
          id="blank-title"
          label={blankWords("title", 1, language.value).label}
          value={name}
          unsaid={PAGE.untitled}
          keep={setName}
        />
      );
    }
    if (which === "unit") {
      return (
        <Choice
          key={which}
          id="blank-unit"
          label={blankWords("unit", 1, language.value).label}
          options={unitOptions(language.value)}
          value={unit}
          keep={(key) => {
            const next = key === "mm" ? "mm" : "in";
            setUnit(next);
            // Measures that nobody has touched take the round figures of the new unit; others stay as they were measured.
            if (said === FIRST_MEASURES[unit]) setSaid(FIRST_MEASURES[next]);
          }}
        />
      );
    }
    const side = which as Side;
    return (
      <LengthBlank
        key={which}
        blank={side}
        label={lengthLabel(blankWords(side, 1, language.value).label, unit, language.value)}
        asks={blankWords(side, 1, language.value).label}
        value={said[side]}
        ruler={ruler}
        unit={side.endsWith("Height")}
        fault={faults[side]}
        washed={false}
        controls="first-drawing"
        otherWay={(length) => lengthOtherWay(length, unit)}
        follow={(length) => setDrafted(length === null || length <= 0 ? null : { ...said, [side]: length })}
        keep={(length) => keep(side, length)}
        refuse={(fault) => refuse(side, fault)}
        putBack={() => setDrafted(null)}
        light={() => undefined}
      />
    );
  };
  const fault = (which: BlankName) => {
    const found = faults[which];
    if (found === undefined) return null;
    return (
      <span key={which} class="mend-here" id={`${which}-fault`}>
        {found.code === "length" ? sayBlankFault(found.fault, found.typed) : sayNotAbove}
        {meantBy(found, unit).map((length) => (
          <button
            key={length}
            type="button"
            onClick={() => {
              refuse(which as Side, null);
              keep(which as Side, length);
            }}
          >
            <Exactly length={length} inUnit={unit} />
          </button>
        ))}
      </span>
    );
  };

  const drawn = drafted ?? said;
  const say = (width: Length, height: Length): string =>
    `${printLength(width, ruler)} × ${printLength(height, ruler)}`;
  return (
    <div class="first">
      <div>
        <h1 ref={title} tabIndex={-1}>
          {FIRST.title}
        </h1>
        <Sentence class="brief" label={FIRST.title} sentence={FIRST_SENTENCE} blank={blank} fault={fault} />
        <button type="button" class="main-act" onClick={() => layOnTable(said, unit, name)}>
          {BEGINNING.layOnTable}
        </button>
        <ul class="ways">
          <li>
            <FileAct
              words={PAGE.bringList}
              accept={LIST_FILES}
              take={(file) => void act(({ bringInList }) => bringInList(file))}
            />
            <span>{FIRST.list}</span>
          </li>
          <li>
            <FileAct
              words={BEGINNING.openCopy}
              accept={SHOW_FILES}
              take={(file) => void act(({ openCopy }) => openCopy(file))}
            />
            <span>{FIRST.copy}</span>
          </li>
          <li>
            <button type="button" onClick={() => void act(({ openExample }) => openExample())}>
              {BEGINNING.openExample}
            </button>
            <span>{FIRST.example}</span>
          </li>
        </ul>
        <Shows />
      </div>
      <figure class="ghost" id="first-drawing">
        <SheetDrawing
          sheet={{ width: drawn.sheetWidth, height: drawn.sheetHeight }}
          image={{ width: drawn.imageWidth, height: drawn.imageHeight }}
          ruler={ruler}
          label={DRAWN.first(
            say(drawn.sheetWidth, drawn.sheetHeight),
            say(drawn.imageWidth, drawn.imageHeight),
          )}
        />
      </figure>
    </div>
  );
}

/** A new show with its first work, the image in the middle of its sheet. */
function layOnTable(said: Measures, unit: Unit, name: string): void {
  const text = (length: Length): string => printExact(length, unit);
  const left = Math.max(0, Math.floor((said.sheetWidth - said.imageWidth) / 2)) as Length;
  const top = Math.max(0, Math.floor((said.sheetHeight - said.imageHeight) / 2)) as Length;
  const show = withIds(
    newShow(PAGE.newShow, unit, [
      {
        title: name === "" ? PAGE.untitled : name,
        design: {
          unit,
          print: {
            width: text(said.sheetWidth),
            height: text(said.sheetHeight),
            image: {
              left: text(left),
              top: text(top),
              width: text(said.imageWidth),
              height: text(said.imageHeight),
            },
          },
        },
      },
    ]),
  );
  openNew(show);
  const first = show.works[0];
  goTo(first === undefined ? { at: "works" } : { at: "work", id: first.id });
}
