import { useEffect, useState } from "react";
import { type KeptRecord, onRecordChange, readRecord } from "./store/record.ts";

/** The record as it stands now, read again whenever it changes here or in another tab; null while it is being opened. */
export const useRecord = (): KeptRecord | null => {
  const [record, setRecord] = useState<KeptRecord | null>(null);
  useEffect(() => {
    let isGone = false;
    const read = (): void => {
      readRecord().then((next) => {
        if (!isGone) setRecord(next);
      }, () => undefined);
    };
    read();
    const end = onRecordChange(read);
    return () => {
      isGone = true;
      end();
    };
  }, []);
  return record;
};
