import type { Composition, MadeStep } from "../../assembly/index.ts";
import { exactFigure, type Length, type Ruler, type Unit } from "../../lengths/index.ts";
import { sayStepName } from "../../words/index.ts";
import { capital, madeSays, PAGE, roundedSays, sumParts } from "../../words/page.ts";
import { Exactly, OnRuler } from "../blanks/figure.tsx";
import { language } from "../state/session.ts";

/** Each figure with the sum that made it, as one would pencil it; of the same call that computed it. */
export function Reckoning({ composition }: { readonly composition: Composition }) {
  const { reckoning, mats, design } = composition;
  const middle = Math.ceil(reckoning.length / 2);
  const { ruler } = design;
  return (
    <div class="under">
      <section aria-labelledby="reckoning-title">
        <h2 id="reckoning-title">{PAGE.reckoning}</h2>
        <Sums steps={reckoning.slice(0, middle)} mats={mats.length} ruler={ruler} />
      </section>
      <div class="continued">
        <Sums steps={reckoning.slice(middle)} mats={mats.length} ruler={ruler} />
      </div>
    </div>
  );
}

function Sums({
  steps,
  mats,
  ruler,
}: {
  readonly steps: readonly MadeStep[];
  readonly mats: number;
  readonly ruler: Ruler;
}) {
  return (
    <table class="sums">
      <tbody>
        {steps.map((step) => (
          <tr key={JSON.stringify(step.name)}>
            <th scope="row">{capital(sayStepName(step.name, mats, language.value))}</th>
            <td>
              <SumText step={step} unit={ruler.unit} />
            </td>
            <td>
              <Result step={step} ruler={ruler} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** What was kept. Where the unit has no figure for it, the ruler's nearest mark stands, marked as such; the most that may be is taken down. */
function Result({ step, ruler }: { readonly step: MadeStep; readonly ruler: Ruler }) {
  if (exactFigure(step.is, ruler.unit).unit === ruler.unit)
    return <Exactly length={step.is} inUnit={ruler.unit} />;
  const most = step.name.of === "cover" || step.name.of === "pocket";
  return <OnRuler length={step.is} ruler={ruler} rounding={most ? "down" : "nearest"} />;
}

/** The sum, and what it makes where that is not what was kept. */
function SumText({ step, unit }: { readonly step: MadeStep; readonly unit: Unit }) {
  const whole = Number.isSafeInteger(step.makes);
  return (
    <>
      {sumParts(step.sum).map((part, index) =>
        typeof part === "string" ? part : <Bare key={index} length={part.length} unit={unit} />,
      )}
      {step.makes !== step.is && (
        <>
          {" "}
          {whole ? (
            <>
              = <Bare length={step.makes as Length} unit={unit} />
            </>
          ) : (
            <span class="together">{madeSays(step.makes, unit)}</span>
          )}
          {step.rounded !== null && `, ${roundedSays(step.rounded)}`}
        </>
      )}
    </>
  );
}

/** In the document's own unit a figure within a sum needs none; in another it does. */
function Bare({ length, unit }: { readonly length: Length; readonly unit: Unit }) {
  return <Exactly length={length} inUnit={unit} unit={exactFigure(length, unit).unit !== unit} />;
}
