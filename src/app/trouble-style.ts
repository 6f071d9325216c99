import { css } from "lit";

/** The guided choice: symptoms as large buttons, then one column of help. */
export const troubleStyle = css`
  h3 {
    margin: 0.8rem 0 0.4rem;
  }
  .sound {
    margin: 0.2rem 0 0.6rem;
    padding-inline-start: 1.3rem;
  }
  .sound li {
    margin-bottom: 0.25rem;
  }
  .symptoms {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    margin: 0;
    padding: 0;
    list-style: none;
  }
  .symptoms li {
    max-width: 100%;
  }
  .symptoms button {
    min-height: 2.5rem;
    text-align: start;
    overflow-wrap: anywhere;
  }
  .picked {
    margin-top: 0.8rem;
    padding-top: 0.6rem;
    border-top: 1px solid var(--rule);
  }
  .picked:focus {
    outline: none;
  }
  .what {
    margin: 0 0 0.4rem;
    font-size: 1.0625rem;
    font-weight: 650;
  }
  .pulls {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem 1.2rem;
    margin: 0.3rem 0 0.6rem;
    padding: 0;
    list-style: none;
  }
  .pulls li {
    display: inline-flex;
    gap: 0.4rem;
    align-items: center;
    min-width: 0;
  }
  @media print {
    :host {
      display: none;
    }
  }
`;
