import { inSentence, keptSays, NAME_DIALOG, PAGE, PICTURE } from "../../words/page.ts";
import { Dialog } from "../blanks/dialog.tsx";
import { TextBlank } from "../blanks/text-blank.tsx";
import { FileAct } from "../file-act.tsx";
import { addPicture, setPicture } from "../pictures.ts";
import { factsChange, type KeptWork } from "../state/change.ts";
import { make, told } from "../state/session.ts";

const FIELDS = [
  ["title", NAME_DIALOG.titleOf],
  ["maker", NAME_DIALOG.maker],
  ["process", NAME_DIALOG.process],
  ["year", NAME_DIALOG.year],
  ["edition", NAME_DIALOG.edition],
] as const;

/** What is written on the work's label. */
export function NameDialog({ work, close }: { readonly work: KeptWork; readonly close: () => void }) {
  return (
    <Dialog title={NAME_DIALOG.title} onClose={close}>
      <div class="name-fields">
        {FIELDS.map(([key, label]) => (
          <p key={key}>
            <span aria-hidden="true">{label}</span>{" "}
            <TextBlank
              id={`name-${key}`}
              label={label}
              value={work[key] ?? ""}
              unsaid={PAGE.notSaid}
              keep={(written) => rename(work, key, label, written)}
            />
          </p>
        ))}
        <p>
          <span>{PICTURE.label}</span>{" "}
          <span class="picture-acts">
            <FileAct
              words={work.picture === undefined ? PICTURE.add : PICTURE.other}
              accept="image/*"
              take={(file) => void addPicture(work, file)}
            />
            {work.picture !== undefined && (
              <button type="button" class="plain" onClick={() => setPicture(work, undefined)}>
                {PICTURE.takeOff}
              </button>
            )}
          </span>
        </p>
      </div>
      <p class="quiet">{PICTURE.how}</p>
    </Dialog>
  );
}

/** A work always has a title; the rest may be left unsaid. */
function rename(work: KeptWork, key: (typeof FIELDS)[number][0], label: string, written: string): void {
  const value = written !== "" ? written : key === "title" ? PAGE.untitled : undefined;
  const said = `${inSentence(label)} ${value ?? PAGE.notSaid}`;
  const change = factsChange(work, { [key]: value }, said);
  if (change !== null && make(change)) told.value = keptSays(said, null);
}
