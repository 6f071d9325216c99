import { css } from "lit";

/** Steps of a plan: what to do large, the rest below it. */
export const reedStepsStyle = css`
  :host {
    display: block;
    min-width: 0;
  }
  ol {
    display: grid;
    gap: 0.9rem;
    grid-template-columns: minmax(0, 1fr);
    margin: 0.4rem 0 0;
    padding: 0;
    list-style: none;
  }
  .step {
    display: grid;
    gap: 0 0.7rem;
    grid-template-columns: 1.9rem minmax(0, 1fr);
    padding-top: 0.7rem;
    border-top: 1px solid var(--rule);
    overflow-wrap: anywhere;
  }
  .number {
    display: grid;
    place-items: center;
    width: 1.8rem;
    height: 1.8rem;
    border: 2px solid var(--accent);
    border-radius: 50%;
    font-weight: 650;
  }
  p {
    margin: 0 0 0.3rem;
  }
  .deed {
    margin: 0.1rem 0 0.3rem;
    color: var(--ink);
    font-family: var(--serif);
    font-size: 1.0625rem;
    font-weight: 650;
    letter-spacing: 0;
    line-height: 1.35;
  }
  .caution {
    padding: 0.35rem 0.6rem;
    border-inline-start: 4px solid var(--loud-word);
    background: var(--ground);
  }
  .final {
    color: var(--loud-word);
    font-weight: 600;
  }
  .soft {
    color: var(--ink-soft);
  }
  button {
    max-width: 100%;
  }
  .done,
  .take {
    border-color: var(--accent);
    font-weight: 600;
  }
  .blanks {
    display: none;
  }
  form {
    padding: 0.6rem 0.75rem;
    border: 1px solid var(--accent);
    border-radius: 8px;
    background: var(--ground);
  }
  .fields {
    display: grid;
    gap: 0.35rem 1rem;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
  }
  .field {
    display: flex;
    flex-wrap: wrap;
    gap: 0.2rem 0.6rem;
    align-items: center;
    justify-content: space-between;
  }
  .wire {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }
  .field .part {
    display: flex;
    flex-wrap: wrap;
    flex: 1;
    gap: 0.2rem 0.6rem;
    align-items: center;
    justify-content: space-between;
    min-width: 0;
  }
  .field.wire {
    display: flex;
    gap: 0.3rem 1rem;
    grid-column: 1 / -1;
  }
  .field.wire legend {
    padding: 0;
  }
  .wire .part {
    flex: 0 1 auto;
  }
  .field input {
    width: 6.5rem;
    min-height: 2.25rem;
    padding: 0 0.5rem;
    text-align: end;
  }
  .field input::placeholder {
    color: var(--ink-soft);
    opacity: 1;
    font-style: italic;
  }
  .field input[aria-invalid] {
    border: 2px solid var(--loud-word);
  }
  .problem {
    flex-basis: 100%;
    margin: 0;
    color: var(--loud-word);
    font-size: 0.8125rem;
    font-weight: 600;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    margin-top: 0.6rem;
  }
  @media print {
    ol {
      gap: 0.3rem;
    }
    .step {
      padding-top: 0.3rem;
      break-inside: avoid;
    }
    p {
      margin-bottom: 0.1rem;
      line-height: 1.2;
    }
    .caution {
      padding-block: 0.1rem;
      background: none;
      border-inline-start-color: #000;
    }
    button,
    form,
    .reread {
      display: none;
    }
    .blanks {
      display: grid;
      gap: 0.25rem 0.6rem;
      grid-template-columns: repeat(auto-fill, minmax(13rem, 1fr));
      margin-top: 0.2rem;
      font-size: 0.875rem;
    }
    .whole {
      grid-column: 1 / -1;
    }
    .line {
      display: inline-block;
      width: 3rem;
      border-bottom: 1px solid #000;
    }
  }
`;
