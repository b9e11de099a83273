import { lawsFor } from "./laws.ts";

lawsFor(2, 4);
