import { useRef } from "preact/hooks";

interface Props {
  readonly words: string;
  readonly accept: string;
  readonly plain?: boolean;
  readonly take: (file: File) => void;
}

/** An act that begins with a file of the person's own. */
export function FileAct({ words, accept, plain = false, take }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" class={plain ? "plain" : undefined} onClick={() => input.current?.click()}>
        {words}
      </button>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        aria-label={words}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = "";
          if (file !== undefined) take(file);
        }}
      />
    </>
  );
}

export const LIST_FILES =
  ".csv,.tsv,.txt,.xlsx,text/csv,application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
export const SHOW_FILES = ".json,application/json";
