import { Button } from "@fluentui/react-button";
import { type ReactElement, useEffect, useState } from "react";

const WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** A link that saves a workbook among the browser's downloads. */
export function SaveFile({ name, bytes }: { readonly name: string; readonly bytes: Uint8Array }): ReactElement {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([new Uint8Array(bytes)], { type: WORKBOOK }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return (
    <Button as="a" href={address} download={name}>
      Save {name}
    </Button>
  );
}
