import { deleteDB, openDB, type IDBPDatabase } from "idb";

/** Everything that a person chose to keep lies in this one database of the browser, by key. */
const databaseName = "reedpoint";
const storeName = "kept";

/** What a person chose to keep on this device. Values are plain data. */
export interface DeviceStore {
  /** Whether it outlives the page; false where the browser refuses, or has refused since. */
  readonly isLasting: boolean;
  /** What is kept under a key; undefined when nothing is. */
  read(key: string): Promise<unknown>;
  /** Writes what becomes of what is there now; two pages at once do not overwrite each other. Throws what `become` throws. */
  change(key: string, become: (kept: unknown) => unknown): Promise<void>;
  /** Erases everything, the database itself too. */
  erase(): Promise<void>;
}

/** What the store tells its owner of its own accord. */
export interface StoreNews {
  /** Another page has erased everything: nothing may be written any more. */
  readonly onErased: () => void;
  /** The browser has begun to refuse; from now on it is kept in memory. */
  readonly onRefused: () => void;
}

/**
 * The store, if it was switched on before. Looking leaves nothing behind: a database that would have to be made first
 * is not.
 *
 * Throws  nothing; where even looking is refused there is no store.
 */
export async function findStore(news: StoreNews): Promise<DeviceStore | undefined> {
  try {
    const found = await openDB(databaseName, 1, {
      upgrade: (_database, _from, _to, transaction) => {
        transaction.done.catch(() => undefined);
        transaction.abort();
      },
    });
    found.close();
    return new KeptStore(await openLasting(news), news);
  } catch {
    return undefined;
  }
}

/**
 * Switches the store on. Where the browser refuses, it is one in memory.
 *
 * Throws  nothing.
 */
export async function makeStore(news: StoreNews): Promise<DeviceStore> {
  try {
    const database = await openLasting(news);
    askToStay();
    return new KeptStore(database, news);
  } catch (cause) {
    console.warn("Reedpoint: the browser refuses to keep anything", cause);
    return new KeptStore(undefined, news);
  }
}

function openLasting({ onErased }: StoreNews): Promise<IDBPDatabase> {
  return openDB(databaseName, 1, {
    upgrade: (database) => void database.createObjectStore(storeName),
    blocking: (_from, _to, event) => {
      (event.target as IDBDatabase).close();
      onErased();
    },
  });
}

/** Asks the browser not to clear it away after days of disuse; it may say no, and nothing depends on it. */
function askToStay(): void {
  try {
    void navigator.storage.persist().catch(() => undefined);
  } catch {
    // Not every page has such a thing.
  }
}

class KeptStore implements DeviceStore {
  readonly #news: StoreNews;
  readonly #memory = new Map<string, unknown>();
  #database: IDBPDatabase | undefined;

  constructor(database: IDBPDatabase | undefined, news: StoreNews) {
    this.#database = database;
    this.#news = news;
  }

  get isLasting(): boolean {
    return this.#database !== undefined;
  }

  async read(key: string): Promise<unknown> {
    try {
      return this.#database ? await this.#database.get(storeName, key) : this.#memory.get(key);
    } catch (cause) {
      return this.#refused(cause).get(key);
    }
  }

  async change(key: string, become: (kept: unknown) => unknown): Promise<void> {
    let isOwners = false;
    const work = (kept: unknown): unknown => {
      isOwners = true;
      const next = become(kept);
      isOwners = false;
      return next;
    };
    try {
      if (this.#database) return await changeIn(this.#database, key, work);
    } catch (cause) {
      // What the owner does wrong is no refusal of the browser's.
      if (isOwners) throw cause;
      this.#refused(cause);
    }
    this.#memory.set(key, become(this.#memory.get(key)));
  }

  async erase(): Promise<void> {
    this.#memory.clear();
    this.#database?.close();
    this.#database = undefined;
    try {
      await deleteDB(databaseName);
    } catch {
      // Where there is no database there is nothing to erase.
    }
  }

  #refused(cause: unknown): Map<string, unknown> {
    console.warn("Reedpoint: the browser refuses to keep anything", cause);
    const isNews = this.#database !== undefined;
    this.#database = undefined;
    if (isNews) this.#news.onRefused();
    return this.#memory;
  }
}

async function changeIn(
  database: IDBPDatabase,
  key: string,
  become: (kept: unknown) => unknown,
): Promise<void> {
  const transaction = database.transaction(storeName, "readwrite");
  const next = become(await transaction.store.get(key));
  await Promise.all([transaction.store.put(next, key), transaction.done]);
}
