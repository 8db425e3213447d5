import { type Context, Hono } from "hono";
import { foundText, type ShowDocument } from "../show/index.ts";
import { PAPER_NAMES } from "../words/paper-names.ts";
import { SERVER } from "../words/server.ts";
import { file } from "./attachment.ts";
import { atMost, readAsked } from "./body.ts";
import type { PaperAsked, Papers } from "./papers.ts";
import { refusal, refuseProblems } from "./refusal.ts";

interface Parts {
  readonly papers: Papers;
  readonly today: () => string;
  readonly picturesFor: (show: ShowDocument) => Promise<(address: string) => Uint8Array | undefined>;
  /** Notes a paper that was made, where the asker says of which show that is kept. */
  readonly note: (show: ShowDocument, id: unknown, paper: string) => Promise<void>;
  readonly mostBytes: number;
}

type Ordered =
  | { readonly ok: true; readonly order: PaperAsked; readonly rest: Readonly<Record<string, unknown>> }
  | { readonly ok: false; readonly answer: Response };

/** A show and the size of its papers, as a request asks for them. */
export async function readPaperOrder(
  context: Context,
  { today, picturesFor }: Pick<Parts, "today" | "picturesFor">,
): Promise<Ordered> {
  const asked = await readAsked(context, today());
  if (!asked.ok) return asked;
  const { show, date, rest } = asked;
  const paper = rest["paper"] ?? null;
  if (paper !== null && paper !== "a4" && paper !== "letter")
    return {
      ok: false,
      answer: refusal(context, 400, {
        field: "paper",
        found: foundText(paper),
        wanted: SERVER.oneOf(["a4", "letter"]),
      }),
    };
  return { ok: true, order: { show, date, paper, picture: await picturesFor(show) }, rest };
}

/** One paper of a show at a time, and a look at all of them. */
export function paperRoutes(parts: Parts): Hono {
  const { papers, mostBytes } = parts;
  const app = new Hono();
  app.post("/one", atMost(mostBytes), async (context) => {
    const asked = await readPaperOrder(context, parts);
    if (!asked.ok) return asked.answer;
    const wanted = asked.rest["name"];
    const name = PAPER_NAMES.find((one) => one === wanted);
    if (name === undefined)
      return refusal(context, 400, {
        field: "name",
        found: foundText(wanted),
        wanted: SERVER.oneOf(PAPER_NAMES),
      });
    const made = await papers.paper({ ...asked.order, name });
    if (!made.ok) return refuseProblems(context, made.problems);
    if (made.value === null)
      return refusal(context, 409, { field: "name", found: name, wanted: SERVER.paperOfShow });
    await parts.note(asked.order.show, asked.rest["id"], name);
    return file(context, made.value, "application/pdf", "inline", `${name}.pdf`);
  });
  app.post("/previews", atMost(mostBytes), async (context) => {
    const asked = await readPaperOrder(context, parts);
    if (!asked.ok) return asked.answer;
    const made = await papers.previews(asked.order);
    if (!made.ok) return refuseProblems(context, made.problems);
    context.header("Cache-Control", "no-store");
    return context.json(made.value);
  });
  return app;
}
