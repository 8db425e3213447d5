import { strFromU8, unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { composeFrom, showDocument, validate } from "../../src/show/index.ts";
import { MOST_BYTES } from "../../src/server/index.ts";
import { appWith, HERE, postJson, SHOW } from "./app.ts";

const get = (path: string, headers: Record<string, string> = {}): Response | Promise<Response> =>
  appWith().app.request(path, { headers: { host: HERE, ...headers } });

describe("who is answered", () => {
  test.each(["127.0.0.1:4817", "localhost:4817", "[::1]:4817"])(
    "[SV1] answers when addressed as %s",
    async (host) => {
      const { app } = appWith();
      expect((await app.request("/health", { headers: { host } })).status).toBe(200);
    },
  );

  test.each([
    "margent.example:4817",
    "127.0.0.1:80",
    "127.0.0.1",
    "127.0.0.1:4817@other.example",
    "",
    "127.0.0.1:4817/x",
  ])("[SV1] refuses the host %j", async (host) => {
    const { app } = appWith();
    const answer = await app.request("/health", { headers: { host } });
    expect(answer.status).toBe(403);
    expect(await answer.json()).toMatchObject({ error: { field: "Host", found: host } });
  });

  test.each(["http://other.example", "null", "http://127.0.0.1:4818", "https://127.0.0.1:4817"])(
    "[SV2] refuses the origin %s and makes no paper for it",
    async (origin) => {
      const { app, orders } = appWith();
      const answer = await postJson(app, "bench-sheet", { show: SHOW, work: 0 }, { origin });
      expect(answer.status).toBe(403);
      expect(await answer.json()).toMatchObject({ error: { field: "Origin", found: origin } });
      expect(orders).toEqual([]);
    },
  );

  test("[SV2] refuses a picture that another site asks for, and lets a link in", async () => {
    const { app } = appWith();
    const headers = { host: HERE, "sec-fetch-site": "cross-site" };
    expect((await app.request("/api/example", { headers })).status).toBe(403);
    expect((await app.request("/", { headers })).status).toBe(200);
  });

  test("[SV2] answers its own page", async () => {
    const { app } = appWith();
    const answer = await postJson(app, "bench-sheet", { show: SHOW, work: 0 }, { origin: `http://${HERE}` });
    expect(answer.status).toBe(200);
  });
});

describe("what every answer carries", () => {
  test.each([
    ["a page", "/", HERE, 200],
    ["nothing there", "/nothing", HERE, 404],
    ["a refused host", "/", "other.example", 403],
    ["the example", "/api/example", HERE, 200],
  ])("[SV3] %s forbids all that the page does not need", async (_, path, host, status) => {
    const { app } = appWith();
    const answer = await app.request(path, { headers: { host } });
    expect(answer.status).toBe(status);
    const policy = answer.headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|\*/);
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(answer.headers.get("referrer-policy")).toBe("no-referrer");
    expect(answer.headers.get("cross-origin-resource-policy")).toBe("same-origin");
    expect(answer.headers.get("permissions-policy")).toContain("camera=()");
    expect(answer.headers.get("access-control-allow-origin")).toBeNull();
  });
});

describe("files of the page", () => {
  test("[SV4] a file named by its content may be kept, any other is asked for again", async () => {
    const script = await get("/assets/page-abc123.js");
    expect(script.headers.get("cache-control")).toBe("public, max-age=31536000, immutable");
    expect(script.headers.get("content-type")).toBe("text/javascript; charset=utf-8");
    const page = await get("/");
    expect(page.headers.get("cache-control")).toBe("no-cache");
    expect(await page.text()).toBe("<!doctype html>");
  });

  test("[SV4] a copy that still holds is not sent again", async () => {
    const etag = (await get("/")).headers.get("etag") ?? "";
    expect(etag).toMatch(/^"[\w-]{22}"$/);
    for (const held of [etag, `"old", ${etag}`, `W/${etag}`, "*"]) {
      const answer = await get("/", { "if-none-match": held });
      expect(answer.status, held).toBe(304);
      expect(await answer.text()).toBe("");
    }
    expect((await get("/", { "if-none-match": '"old"' })).status).toBe(200);
  });

  test("[SV4] other content has another ETag", async () => {
    expect((await get("/")).headers.get("etag")).not.toBe(
      (await get("/assets/page-abc123.js")).headers.get("etag"),
    );
  });

  test.each([
    "/../package.json",
    "/..%2fpackage.json",
    "/assets/..%2f..%2fpackage.json",
    "/index.html/",
    "/assets",
  ])("[SV6] nothing outside the page is at %s", async (path) => {
    const answer = await get(path);
    expect(answer.status).toBe(404);
    expect(await answer.json()).toHaveProperty("error.found");
  });
});

describe("the example", () => {
  test("[SV7] says that it is well", async () => {
    const answer = await appWith().app.request("/health", { headers: { host: HERE } });
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({ ok: true });
  });

  test("[SV8] gives a show the format accepts, with every picture at its address", async () => {
    const { app } = appWith();
    const answer = await app.request("/api/example", { headers: { host: HERE } });
    const read = validate(showDocument, await answer.json());
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value.works).toHaveLength(24);
    for (const work of read.value.works) {
      const picture = await app.request(work.picture ?? "", { headers: { host: HERE } });
      expect(picture.status, work.title).toBe(200);
      expect(picture.headers.get("content-type")).toBe("image/jpeg");
      expect([...new Uint8Array(await picture.arrayBuffer()).slice(0, 3)]).toEqual([0xff, 0xd8, 0xff]);
      expect(composeFrom(work.design, read.value.practice).ok, work.title).toBe(true);
    }
  });

  test("[SV8] has no picture but its own", async () => {
    const { app } = appWith();
    for (const name of ["none.jpg", "..%2fshow.json"]) {
      expect((await app.request(`/api/example/pictures/${name}`, { headers: { host: HERE } })).status).toBe(
        404,
      );
    }
  });
});

describe("papers", () => {
  test("[SV9] makes the bench sheet of the work asked for, on the day asked for", async () => {
    const { app, orders } = appWith();
    const answer = await postJson(app, "bench-sheet", { show: SHOW, work: 1, date: "2026-12-14" });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("application/pdf");
    expect(answer.headers.get("cache-control")).toBe("no-store");
    expect(strFromU8(new Uint8Array(await answer.arrayBuffer()))).toBe("%PDF work 1");
    expect(orders).toMatchObject([{ work: 1, date: "2026-12-14", show: { name: "Two" } }]);
  });

  test("[SV9] takes today where no day is given", async () => {
    const { app, orders } = appWith();
    await postJson(app, "bench-sheet", { show: SHOW, work: 0 });
    expect(orders).toMatchObject([{ date: "2026-03-04" }]);
  });

  test("[SV9] hands over the example's pictures by their address", async () => {
    const { app, orders } = appWith();
    await postJson(app, "bench-sheet", { show: SHOW, work: 0 });
    const [order] = orders;
    expect(order?.picture("/api/example/pictures/bell.jpg")?.length).toBeGreaterThan(1000);
    expect(order?.picture("/api/example/pictures/../show.json")).toBeUndefined();
    expect(order?.picture("/etc/hosts")).toBeUndefined();
  });

  test("[SV10] makes one zip of the packet, twice the same", async () => {
    const { app } = appWith();
    const [one, two] = await Promise.all(
      [0, 1].map(async () => {
        const answer = await postJson(app, "packet", { show: SHOW, date: "2026-12-14" });
        expect(answer.headers.get("content-type")).toBe("application/zip");
        return new Uint8Array(await answer.arrayBuffer());
      }),
    );
    expect(one).toEqual(two);
    const files = unzipSync(one ?? new Uint8Array());
    expect(Object.keys(files).toSorted()).toEqual(["check-list.csv", "packet.json"]);
    expect(strFromU8(files["packet.json"] ?? new Uint8Array())).toBe('{"works":2}');
  });

  test.each([
    ["no JSON", "{", "", "one JSON document"],
    ["a list", "[]", "", "one JSON document"],
    ["no show", "{}", "show", "an object"],
    [
      "a show without works",
      { show: { format: "margent-show", version: 1, name: "x" } },
      "show.works",
      "a list",
    ],
    ["no work", { show: SHOW }, "work", "from 0 to 1"],
    ["half a work", { show: SHOW, work: 0.5 }, "work", "from 0 to 1"],
    ["a work past the last", { show: SHOW, work: 2 }, "work", "from 0 to 1"],
    ["a work before the first", { show: SHOW, work: -1 }, "work", "from 0 to 1"],
    ["a day the calendar lacks", { show: SHOW, work: 0, date: "2026-02-30" }, "date", "2026-12-14"],
    ["a day that is none", { show: SHOW, work: 0, date: 5 }, "date", "2026-12-14"],
  ])("[SV6] refuses %s by naming the field and what is wanted", async (_, body, field, wanted) => {
    const { app, orders } = appWith();
    const answer = await postJson(app, "bench-sheet", body);
    expect(answer.status).toBe(400);
    const { error } = (await answer.json()) as { error: { field: string; found: string; wanted: string } };
    expect(error.field).toBe(field);
    expect(error.wanted).toContain(wanted);
    expect(orders).toEqual([]);
  });

  test("[SV6] passes on the problems of whoever makes the paper, all of them", async () => {
    const { app } = appWith({
      problems: [
        { field: "works.0.design.outer", found: "7 1/", wanted: { kind: "outer-shape" } },
        { field: "works.1.design.print.width", found: "0", wanted: { kind: "size" } },
      ],
    });
    for (const paper of ["bench-sheet", "packet"] as const) {
      const answer = await postJson(app, paper, { show: SHOW, work: 0 });
      expect(answer.status).toBe(400);
      expect(await answer.json()).toMatchObject({
        error: { field: "works.0.design.outer", found: "7 1/" },
        more: [{ field: "works.1.design.print.width", wanted: "a length above 0" }],
      });
    }
  });

  test("[SV6] tells its own faults at home and not to the asker", async () => {
    const fault = new Error("secret of the house");
    const { app, reported } = appWith({ fault });
    const answer = await postJson(app, "packet", { show: SHOW });
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain("secret");
    expect(answer.headers.get("content-security-policy")).toContain("default-src 'none'");
    expect(reported).toEqual([fault]);
  });

  test("[SV5] refuses a body that is no JSON by its type", async () => {
    const { app } = appWith();
    for (const type of ["text/plain", "application/x-www-form-urlencoded", ""]) {
      const answer = await postJson(app, "bench-sheet", { show: SHOW, work: 0 }, { "content-type": type });
      expect(answer.status, type).toBe(415);
    }
  });

  test("[SV5] refuses a body that is too long, whether it says so or not", async () => {
    const { app, orders } = appWith();
    const long = `{"show":"${"x".repeat(MOST_BYTES.benchSheet)}"}`;
    const said = await postJson(app, "bench-sheet", long, { "content-length": String(long.length) });
    expect(said.status).toBe(413);
    expect(await said.json()).toMatchObject({ error: { wanted: "at most 8 MB" } });

    const silent = new ReadableStream<Uint8Array>({
      start(controller) {
        const piece = new TextEncoder().encode("x".repeat(1_000_000));
        for (let i = 0; i < 9; i++) controller.enqueue(piece);
        controller.close();
      },
    });
    const request = new Request(`http://${HERE}/api/papers/bench-sheet`, {
      method: "POST",
      body: silent,
      headers: { host: HERE, "content-type": "application/json" },
      duplex: "half",
    });
    expect((await app.request(request)).status).toBe(413);
    expect(orders).toEqual([]);
  });
});

describe("one paper at a time", () => {
  test("[SV40] gives the paper that is named, at the size asked for, and refuses what the show has no part for", async () => {
    const { app, orders } = appWith();
    const answer = await postJson(app, "one", { show: SHOW, name: "cut-plan", paper: "a4" });
    expect(await answer.text()).toBe("%PDF cut-plan");
    expect(answer.headers.get("content-type")).toBe("application/pdf");
    expect(orders[0]).toMatchObject({ paper: "a4" });
    expect((await postJson(app, "one", { show: SHOW, name: "light" })).status).toBe(409);
    const unknown = await postJson(app, "one", { show: SHOW, name: "poster" });
    expect(unknown.status).toBe(400);
    expect(await unknown.json()).toMatchObject({ error: { field: "name" } });
    const folded = await postJson(app, "previews", { show: SHOW, paper: "a0" });
    expect(await folded.json()).toMatchObject({ error: { field: "paper", found: "a0" } });
    const looked = await postJson(app, "previews", { show: SHOW });
    expect(await looked.json()).toMatchObject({ leftOut: ["No light is said."] });
  });
});
