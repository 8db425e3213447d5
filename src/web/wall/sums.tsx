import { sum, times, type Length } from "../../lengths/index.ts";
import { WALL } from "../../words/page.ts";
import { Exactly, OnRuler } from "../blanks/figure.tsx";
import type { WallOnPage } from "./hung.ts";

/** Frames, gaps and ends of a row: with each other they are the wall. Nothing where the works hang otherwise. */
export function WallSums({ wall }: { readonly wall: WallOnPage }) {
  const { request, plan } = wall.hung;
  const { job, ruler } = request;
  const widths = plan.order.flatMap((frame) => job.frames[frame]?.width ?? []);
  if ((job.rule.kind !== "gap" && job.rule.kind !== "spread") || widths.length === 0) return null;
  const ends = [plan.gaps[0], plan.gaps.at(-1)].filter((end) => end !== undefined);
  const inner = plan.gaps.slice(1, -1);
  const [gap] = inner;
  const alike = gap !== undefined && inner.every((one) => one === gap);
  const figure = (length: Length) => <OnRuler length={length} ruler={ruler} unit={false} />;
  const added = (lengths: readonly Length[]) =>
    lengths.map((length, index) => (
      <span key={index}>
        {index > 0 && " + "}
        {figure(length)}
      </span>
    ));
  const rows = [
    { name: WALL.frames, parts: added(widths), is: sum(widths) },
    ...(gap === undefined
      ? []
      : [
          {
            name: WALL.gaps,
            parts: alike ? (
              <>
                {inner.length} × {figure(gap)}
              </>
            ) : (
              added(inner)
            ),
            is: alike ? times(gap, inner.length) : sum(inner),
          },
        ]),
    { name: WALL.ends, parts: added(ends), is: sum(ends) },
  ];
  return (
    <section aria-labelledby="adds-title">
      <h2 id="adds-title">{WALL.adds}</h2>
      <table class="sums">
        <tbody>
          {rows.map(({ name, parts, is }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{parts}</td>
              <td>
                <OnRuler length={is} ruler={ruler} />
              </td>
            </tr>
          ))}
          <tr class="total">
            <th scope="row">{WALL.whole}</th>
            <td>{WALL.allAbove}</td>
            <td>
              <Exactly length={sum(rows.map(({ is }) => is))} inUnit={ruler.unit} />
            </td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
