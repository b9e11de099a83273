import { lawsFor } from "./laws.ts";

lawsFor(1, 4);
