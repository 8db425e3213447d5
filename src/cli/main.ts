#!/usr/bin/env node
import { Command, CommanderError } from "commander";
import {
  composeDocument,
  cutDocument,
  jsonSchemaOf,
  practiceDocument,
  showDocument,
  stockDocument,
} from "../show/index.ts";
import { localDay } from "../packet/index.ts";
import { CannotServe, papersOf, serve, type ServeOptions } from "../server/index.ts";
import { CLI } from "../words/cli.ts";
import { type ComposeOptions, runCompose } from "./compose.ts";
import { type CutOptions, runCut } from "./cut.ts";
import { type DrawOptions, runDraw } from "./draw.ts";
import { Unreadable } from "./input.ts";
import { type ListOptions, runList } from "./list.ts";
import { type PacketOptions, runPacket } from "./packet.ts";

const SCHEMAS = {
  compose: composeDocument,
  show: showDocument,
  practice: practiceDocument,
  stock: stockDocument,
  cut: cutDocument,
} as const;

/** The program: arguments in, one call, an exit status out. Standard output holds results only. */
export async function main(argv: readonly string[]): Promise<number> {
  let status = 0;
  const program = new Command("margent").description(CLI.about).exitOverride().showHelpAfterError();

  program
    .command("compose")
    .description(CLI.compose.about)
    .argument("[file]", CLI.compose.file)
    .option("--json", CLI.compose.json)
    .option("--lines", CLI.compose.lines)
    .option("--practice <file>", CLI.compose.practice)
    .addHelpText("after", CLI.compose.help)
    .action(async (file: string | undefined, options: ComposeOptions) => {
      status = await runCompose(file, options);
    });

  program
    .command("packet")
    .description(CLI.packet.about)
    .argument("<show>", CLI.packet.show)
    .requiredOption("--out <folder>", CLI.packet.out)
    .option("--practice <file>", CLI.packet.practice)
    .option("--stock <file>", CLI.packet.stock)
    .option("--paper <name>", CLI.packet.paper)
    .option("--date <day>", CLI.packet.date)
    .option("--seconds <number>", CLI.packet.seconds)
    .addHelpText("after", CLI.packet.help)
    .action(async (show: string, options: PacketOptions) => {
      status = await runPacket(show, options, today);
    });

  program
    .command("cut")
    .description(CLI.cut.about)
    .argument("[file]", CLI.cut.file)
    .option("--json", CLI.compose.json)
    .option("--lines", CLI.compose.lines)
    .addHelpText("after", CLI.cut.help)
    .action(async (file: string | undefined, options: CutOptions) => {
      status = await runCut(file, options);
    });

  program
    .command("list")
    .description(CLI.list.about)
    .argument("<show>", CLI.packet.show)
    .requiredOption("--out <file>", CLI.list.out)
    .action(async (show: string, options: ListOptions) => {
      status = await runList(show, options);
    });

  program
    .command("draw")
    .description(CLI.draw.about)
    .argument("[file]", CLI.compose.file)
    .requiredOption("--out <file>", CLI.draw.out)
    .option("--mat <number>", CLI.draw.mat, "1")
    .option("--from <side>", CLI.draw.from, "back")
    .option("--practice <file>", CLI.compose.practice)
    .action(async (file: string | undefined, options: DrawOptions) => {
      status = await runDraw(file, options, today);
    });

  program
    .command("serve")
    .description(CLI.serve.about)
    .option("--port <number>", CLI.serve.port)
    .option("--home <folder>", CLI.serve.home)
    .option("--open", CLI.serve.open)
    .option("--no-open", CLI.serve.noOpen)
    .action(async (options: Pick<ServeOptions, "port" | "home" | "open">) => {
      await serve({ ...options, papers: papersOf(() => performance.now()), clock: () => new Date() });
    });

  program
    .command("schema")
    .description(CLI.schema)
    .argument("<document>", Object.keys(SCHEMAS).join(", "))
    .action((name: string) => {
      if (!isSchema(name))
        throw new Unreadable(CLI.problem("document", name, Object.keys(SCHEMAS).join(", ")));
      process.stdout.write(`${JSON.stringify(jsonSchemaOf(SCHEMAS[name]), null, 2)}\n`);
    });

  try {
    await program.parseAsync(argv, { from: "user" });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!(error instanceof Unreadable || error instanceof CannotServe)) throw error;
    process.stderr.write(`margent: ${error.message}\n`);
    return 2;
  }
}

const today = (): string => localDay(new Date());

const isSchema = (name: string): name is keyof typeof SCHEMAS => Object.hasOwn(SCHEMAS, name);

// A reader that closes its end early (`| head`) is no fault of the run.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await main(process.argv.slice(2));
