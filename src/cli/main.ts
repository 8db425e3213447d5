#!/usr/bin/env node
import { Command, CommanderError } from "commander";
import { localDay } from "../packet/index.ts";
import { CLI } from "../words/cli.ts";
import type { ComposeOptions } from "./compose.ts";
import type { AnswerOptions } from "./lines.ts";
import type { HangOptions } from "./hang.ts";
import type { SeriesOptions } from "./series.ts";
import type { DrawOptions } from "./draw.ts";
import { isUnreadable } from "./input.ts";
import type { ListOptions } from "./list.ts";
import type { PacketOptions } from "./packet.ts";
import { SCHEMA_NAMES } from "./schema-names.ts";
import type { ServeAsked } from "./serve.ts";
import type { StudioAsked } from "./studio.ts";

/**
 * The program: arguments in, one call, an exit status out. Standard output holds results only. Each
 * command is loaded when it is called, so that none waits for what another needs.
 */
export async function main(argv: readonly string[]): Promise<number> {
  let status = 0;
  const program = new Command("margent").description(CLI.about).exitOverride().showHelpAfterError();

  answering(program, "compose")
    .option("--practice <file>", CLI.compose.practice)
    .option("--reuse", CLI.compose.reuse)
    .option("--stock <file>", CLI.compose.stock)
    .action(async (file: string | undefined, options: ComposeOptions) => {
      const { runCompose } = await import("./compose.ts");
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
      const { runPacket } = await import("./packet.ts");
      status = await runPacket(show, options, today);
    });

  answering(program, "cut").action(async (file: string | undefined, options: AnswerOptions) => {
    const { runCut } = await import("./cut.ts");
    status = await runCut(file, options);
  });

  answering(program, "chop").action(async (file: string | undefined, options: AnswerOptions) => {
    const { runChop } = await import("./chop.ts");
    status = await runChop(file, options);
  });

  answering(program, "hang")
    .option("--sheet <file>", CLI.hang.sheet)
    .option("--paper <name>", CLI.hang.paper, "a4")
    .option("--date <day>", CLI.packet.date)
    .action(async (file: string | undefined, options: HangOptions) => {
      const { runHang } = await import("./hang.ts");
      status = await runHang(file, options, today);
    });

  answering(program, "series")
    .option("--works <list>", CLI.series.works)
    .option("--practice <file>", CLI.compose.practice)
    .action(async (file: string | undefined, options: SeriesOptions) => {
      const { runSeries } = await import("./series.ts");
      status = await runSeries(file, options);
    });

  program
    .command("list")
    .description(CLI.list.about)
    .argument("<show>", CLI.packet.show)
    .requiredOption("--out <file>", CLI.list.out)
    .action(async (show: string, options: ListOptions) => {
      const { runList } = await import("./list.ts");
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
      const { runDraw } = await import("./draw.ts");
      status = await runDraw(file, options, today);
    });

  program
    .command("serve")
    .description(CLI.serve.about)
    .option("--port <number>", CLI.serve.port)
    .option("--home <folder>", CLI.serve.home)
    .option("--open", CLI.serve.open)
    .option("--no-open", CLI.serve.noOpen)
    .action(async (options: ServeAsked) => {
      const { runServe } = await import("./serve.ts");
      await runServe(options);
    });

  for (const name of ["backup", "restore", "export", "import"] as const) {
    const command = program
      .command(name)
      .description(CLI[name].about)
      .argument("<file>", CLI[name].file)
      .option("--home <folder>", CLI.serve.home)
      .addHelpText("after", CLI[name].help);
    if (name === "export") command.option("--show <name>", CLI.export.show);
    command.action(async (file: string, asked: StudioAsked) => {
      const studio = await import("./studio.ts");
      if (name === "backup") await studio.runBackup(file, asked);
      else if (name === "restore") await studio.runRestore(file, asked);
      else if (name === "export") await studio.runExport(file, asked);
      else await studio.runImport(file, asked);
    });
  }

  program
    .command("schema")
    .description(CLI.schema)
    .argument("<document>", SCHEMA_NAMES.join(", "))
    .action(async (name: string) => {
      const { runSchema } = await import("./schema.ts");
      runSchema(name);
    });

  try {
    await program.parseAsync(argv, { from: "user" });
    return status;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2;
    if (!isUnreadable(error)) throw error;
    process.stderr.write(`margent: ${error.message}\n`);
    return 2;
  }
}

/** A command that answers one document, or one a line. */
const answering = (program: Command, name: "compose" | "cut" | "chop" | "hang" | "series"): Command =>
  program
    .command(name)
    .description(CLI[name].about)
    .argument("[file]", CLI[name].file)
    .option("--json", CLI.compose.json)
    .option("--lines", CLI.compose.lines)
    .addHelpText("after", CLI[name].help);

const today = (): string => localDay(new Date());

// A reader that closes its end early (`| head`) is no fault of the run.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

process.exitCode = await main(process.argv.slice(2));
