/** The names inside an export: `docs/format.md` tells what each holds. */
export const ARCHIVE = {
  head: "export.json",
  show: "show.json",
  history: "history.json",
  papers: "papers.json",
};
export const PICTURES = "pictures/";
export const EXPORT_FORMAT = "margent-export";
export const EXPORT_VERSION = 1;

/** A show's folder inside the export of a studio; a show alone lies at the top. */
export const folderOf = (index: number): string => `shows/${index + 1}/`;
