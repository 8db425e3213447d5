import type { Composition, Design } from "../../assembly/index.ts";
import { exactFigure, type Length, type Unit } from "../../lengths/index.ts";
import {
  type BlankName,
  blankWords,
  lengthLabel,
  lengthOtherWay,
  liftOtherWay,
  PAGE,
} from "../../words/page.ts";
import { Choice } from "../blanks/choice.tsx";
import { meantBy } from "../blanks/fault.ts";
import { faultSays } from "../blanks/fault-says.ts";
import { Exactly } from "../blanks/figure.tsx";
import { saidLength } from "../blanks/set-length.ts";
import { LengthBlank } from "../blanks/length-blank.tsx";
import { NumberBlank } from "../blanks/number-blank.tsx";
import { TextBlank } from "../blanks/text-blank.tsx";
import { controlsOf } from "../drawing/parts.ts";
import type { KeptWork } from "../state/change.ts";
import { lit, setUnread, unread } from "../state/draft.ts";
import { language } from "../state/session.ts";
import { follow, keep, putBack } from "./editing.ts";
import type { Field } from "./field.ts";
import { fieldOf } from "./fields.ts";
import { isPointedAt } from "./pointing.ts";

/** The first side of a size leaves its unit to the second, where both are in the work's own. */
const PAIRS: Readonly<Partial<Record<BlankName, BlankName>>> = {
  sheetWidth: "sheetHeight",
  imageWidth: "imageHeight",
  windowWidth: "windowHeight",
  outerWidth: "outerHeight",
};

interface Props {
  readonly name: BlankName;
  readonly work: KeptWork;
  readonly composition: Composition;
}

export const light = (name: BlankName) => (on: boolean) => {
  if (on) lit.value = name;
  else if (lit.value === name) lit.value = null;
};

/** The control that stands in a blank of the work's sentences, dialogs excepted. */
export function WorkBlank({ name, work, composition }: Props) {
  const { design } = composition;
  const field = fieldOf(name);
  const words = blankWords(name, design.mats.length, language.value);
  const fault = unread.value.get(name);
  switch (field.kind) {
    case "length":
      return <WorkLength name={name} work={work} composition={composition} field={field} />;
    case "number": {
      const write = (value: number) => field.write(work.design, design, value);
      return (
        <NumberBlank
          blank={name}
          label={words.label}
          value={field.read(design)}
          unit={field.unit}
          stride={field.step}
          light={light(name)}
          fault={fault}
          washed={isPointedAt(name)}
          follow={(value) => follow(work, name, value === null ? null : write(value))}
          keep={(value) => keep(work, name, write(value), `${words.said} ${value}${field.unit}`)}
          refuse={(found) => setUnread(name, found)}
          putBack={() => putBack(name)}
        />
      );
    }
    case "choice": {
      const options = field.options(design, language.value);
      const said = (key: string): string =>
        `${words.said} ${options.find((option) => option.key === key)?.words ?? key}`;
      return (
        <Choice
          id={`blank-${name}`}
          label={words.label}
          options={options}
          value={field.read(design)}
          washed={isPointedAt(name)}
          keep={(key) => keep(work, name, field.write(work.design, design, key), said(key))}
          light={light(name)}
        />
      );
    }
    case "text":
      return (
        <TextBlank
          id={`blank-${name}`}
          label={words.label}
          value={field.read(design)}
          unsaid={PAGE.notSaid}
          keep={(text) => keep(work, name, field.write(work.design, text), `${words.said} ${text}`)}
        />
      );
    case "dialog":
      return null;
  }
}

function WorkLength({
  name,
  work,
  composition,
  field,
}: Props & { readonly field: Extract<Field, { kind: "length" }> }) {
  const { design } = composition;
  const { unit } = design.ruler;
  const words = blankWords(name, design.mats.length, language.value);
  const length = field.read(design);
  const write = (to: Length) => field.write(work.design, design, to);
  return (
    <LengthBlank
      blank={name}
      label={lengthLabel(words.label, exactFigure(length, unit).unit, language.value)}
      asks={words.label}
      value={length}
      ruler={design.ruler}
      unit={!leavesUnit(name, length, design)}
      fault={unread.value.get(name)}
      washed={isPointedAt(name)}
      controls={controlsOf(name)}
      otherWay={(now) => otherWay(name, now, unit)}
      follow={(now) => follow(work, name, now === null ? null : write(now))}
      keep={(now) => keep(work, name, write(now), `${words.said} ${saidLength(now, unit)}`)}
      refuse={(found) => setUnread(name, found)}
      putBack={() => putBack(name)}
      light={light(name)}
    />
  );
}

function leavesUnit(name: BlankName, length: Length, design: Design): boolean {
  const partner = PAIRS[name];
  if (partner === undefined) return false;
  const other = fieldOf(partner);
  const { unit } = design.ruler;
  return (
    other.kind === "length" && exactFigure(length, unit).unit === exactFigure(other.read(design), unit).unit
  );
}

const otherWay = (name: BlankName, length: Length, unit: Unit): string =>
  name === "liftBy" ? liftOtherWay(saidLength((2 * length) as Length, unit)) : lengthOtherWay(length, unit);

/** What is to be mended in a blank, with what may have been meant. */
export function Fault({ name, work, composition }: Props) {
  const fault = unread.value.get(name);
  const field = fieldOf(name);
  if (fault === undefined) return null;
  const { design } = composition;
  const words = blankWords(name, design.mats.length, language.value);
  return (
    <span class="mend-here" id={`${name}-fault`}>
      {faultSays(fault)}
      {field.kind === "length" &&
        meantBy(fault, design.ruler.unit).map((length) => (
          <button
            key={length}
            type="button"
            onClick={() => {
              const text = saidLength(length, design.ruler.unit);
              keep(work, name, field.write(work.design, design, length), `${words.said} ${text}`);
              document.getElementById(`blank-${name}`)?.focus();
            }}
          >
            <Exactly length={length} inUnit={design.ruler.unit} />
          </button>
        ))}
    </span>
  );
}
