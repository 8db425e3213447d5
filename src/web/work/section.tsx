import { useMemo } from "preact/hooks";
import type { Composition } from "../../assembly/index.ts";
import { type SectionView, sectionView } from "../../drawings/index.ts";
import { inch, type Length, mm, type Ruler, type Unit } from "../../lengths/index.ts";
import { DRAWN, layerName, PAGE, sectionTimes, stackSays } from "../../words/page.ts";
import { Exactly, OnRuler } from "../blanks/figure.tsx";
import { Drawn } from "../drawing/marks.tsx";
import { fromPx } from "../drawing/pixels.ts";
import { useUnchanged } from "../drawing/unchanged.ts";
import { useWidth } from "../drawing/use-width.ts";
import { language } from "../state/session.ts";

/** A cut through the foot, with its layers named beside it. */
export function Section(props: {
  readonly composition: Composition;
  readonly scale: number;
  readonly unread: boolean;
  readonly parts: readonly string[];
}) {
  const { composition, scale } = props;
  const [at, width] = useWidth<HTMLDivElement>();
  const section = useMemo(
    () => (width === 0 ? null : fittedSection(composition, scale, width)),
    [composition, scale, width],
  );
  return (
    <>
      <figcaption>
        <b>{PAGE.section.name}</b>{" "}
        <span>{section === null ? PAGE.section.gloss : sectionTimes(section.times, section.broken)}</span>
      </figcaption>
      <div class="with-list">
        <div class="at-width" ref={at}>
          {section !== null && (
            <Drawn
              drawing={section}
              name="section"
              label={DRAWN.section}
              lit={props.parts}
              unread={props.unread}
            />
          )}
        </div>
        {section !== null && <Layers section={section} composition={composition} />}
      </div>
    </>
  );
}

/** The stack is read closer than a border: a rabbet either takes it or does not. */
const CLOSE: Readonly<Record<Unit, Ruler>> = {
  in: { unit: "in", graduation: inch(1, 64) },
  mm: { unit: "mm", graduation: mm(0.1) },
};

/** As large as its layers want to be seen, and smaller where borders and strips would not fit the width at hand. */
function fittedSection(composition: Composition, scale: number, width: number): SectionView {
  const options = { scale, ruler: composition.design.ruler, width: fromPx(width) };
  let view = sectionView(composition, options);
  while (view.width > options.width && view.times > 1) {
    const fits = Math.floor((view.times * options.width) / view.width);
    view = sectionView(composition, { ...options, times: Math.max(1, Math.min(fits, view.times - 1)) });
  }
  return view;
}

function Layers({
  section,
  composition,
}: {
  readonly section: SectionView;
  readonly composition: Composition;
}) {
  const { unit } = composition.design.ruler;
  const stack = section.layers.reduce((sum, { thickness }) => sum + thickness, 0) as Length;
  return useUnchanged(
    <ol class="layers">
      {section.layers.map(({ number, kind, board, thickness }) => (
        <li key={number}>
          <span>{number}</span>
          <span>{layerName(kind, board, language.value)}</span>
          <Exactly length={thickness} inUnit={unit} />
        </li>
      ))}
      <li class="sum">
        <span />
        <span>{stackSays}</span>
        <OnRuler length={stack} ruler={CLOSE[unit]} rounding="up" />
      </li>
    </ol>,
  );
}
