import v8 from "node:v8";
import vm from "node:vm";

/** Bytes on the heap that something still holds, after what nothing holds has been collected. */
export function bytesHeld(): number {
  v8.setFlagsFromString("--expose-gc");
  const collect = vm.runInNewContext("gc") as () => void;
  collect();
  return v8.getHeapStatistics().used_heap_size;
}
