// The small part of Eleventy that we use, typed by hand: the package ships no types.
declare module "@11ty/eleventy" {
  export interface EleventyConfig {
    readonly benchmarkManager: { get(group: string): { setMinimumThresholdMs(milliseconds: number): void } };
    addGlobalData(name: string, data: unknown): void;
    addFilter(name: string, filter: (...given: never[]) => unknown): void;
    addPassthroughCopy(paths: string | Readonly<Record<string, string>>): void;
    addPlugin(plugin: (config: EleventyConfig) => void | Promise<void>): void;
    addWatchTarget(path: string): void;
    setNunjucksEnvironmentOptions(options: { readonly throwOnUndefined?: boolean; readonly trimBlocks?: boolean; readonly lstripBlocks?: boolean }): void;
    setServerOptions(options: Readonly<Record<string, unknown>>): void;
    setWatchThrottleWaitTime(milliseconds: number): void;
    setWatchJavaScriptDependencies(watch: boolean): void;
    setFreezeReservedData(freeze: boolean): void;
    on(event: string, listener: (event: never) => void | Promise<void>): void;
  }
  export interface EleventyOptions {
    readonly configPath?: string;
    readonly quietMode?: boolean;
    readonly runMode?: "build" | "serve" | "watch";
    readonly config?: (config: EleventyConfig) => void | Promise<void>;
  }
  export interface WrittenPage {
    readonly inputPath: string;
    readonly outputPath: string;
    readonly url: string;
    readonly content: string;
  }
  export default class Eleventy {
    constructor(input: string, output: string, options?: EleventyOptions);
    init(): Promise<void>;
    disableLogger(): void;
    write(): Promise<[copies: unknown, pages: readonly WrittenPage[]]>;
    toJSON(): Promise<readonly WrittenPage[]>;
    watch(): Promise<unknown>;
    serve(port: number): Promise<void>;
    stopWatch(): Promise<void>;
  }
}
