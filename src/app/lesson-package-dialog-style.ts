import { css } from "lit";

/** The dialog that makes a package of a lesson. */
export const lessonPackageDialogStyle = css`
  dialog {
    width: min(34rem, calc(100% - 1.5rem));
    padding: 1rem 1.2rem;
    border: 1px solid var(--edge);
    border-radius: 12px;
    background: var(--card);
    color: inherit;
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 35%);
  }
  p {
    margin: 0.5rem 0;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  fieldset {
    display: grid;
    gap: 0.1rem;
    min-width: 0;
    margin: 0.8rem 0;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-weight: 600;
  }
  label {
    display: flex;
    gap: 0.5rem;
    align-items: center;
    min-height: 2rem;
  }
  input[type="radio"] {
  }
  input[type="text"] {
    width: 4.5rem;
    min-height: 2.25rem;
    padding: 0.25rem 0.5rem;
  }
  .problem {
    color: var(--loud-word);
  }
  .foot {
    display: flex;
    flex-wrap: wrap;
    gap: 0.6rem 1rem;
    align-items: center;
    margin-top: 1rem;
  }
`;
