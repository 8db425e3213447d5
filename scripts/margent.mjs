#!/usr/bin/env node
// `npm run margent -- …`: the command line.
import { pathToFileURL } from "node:url";
import { bundled } from "./bundle.mjs";

await import(pathToFileURL(await bundled("src/cli/main.ts")).href);
