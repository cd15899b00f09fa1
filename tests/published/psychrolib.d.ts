/** What the tests take of the library; it comes without types of its own. */
declare module 'psychrolib' {
  const library: {
    readonly SI: unknown;
    SetUnitSystem(system: unknown): void;
    /** Degrees Celsius and a share of 0 to 1; below freezing it is the frost point. */
    GetTDewPointFromRelHum(air: number, humidity: number): number;
  };
  export default library;
}
