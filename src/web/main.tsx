import { render } from "preact";
import { App } from "./app.tsx";
import { browserStore } from "./browser-store.ts";
import { fetchTheRest } from "./later.tsx";
import { beginLight } from "./light.ts";
import { begin } from "./state/session.ts";
import { followAddress } from "./state/route.ts";
import { watchComponents } from "./state/signal.ts";
import { followKeys } from "./keys.ts";
import { listenForLists } from "./paste.ts";
import { listenForUndo } from "./undo-acts.tsx";

watchComponents();
const store = browserStore();
beginLight(store);
begin(store);
followAddress();
followKeys();
listenForUndo();
listenForLists();

const page = document.getElementById("page");
if (page !== null) render(<App />, page);
fetchTheRest();
