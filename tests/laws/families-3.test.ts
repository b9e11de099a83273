import { lawsFor } from "./laws.ts";

lawsFor(3, 4);
