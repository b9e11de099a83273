import { lawsFor } from "./laws.ts";

lawsFor(0, 4);
