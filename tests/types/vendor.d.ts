declare module 'psychrolib' {
  const psychrolib: {
    SetUnitSystem(system: number): void;
    readonly SI: number;
    readonly IP: number;
    GetSatVapPres(tDryBulbC: number): number;
    GetTDewPointFromRelHum(tDryBulbC: number, relHum: number): number;
    GetTWetBulbFromRelHum(tDryBulbC: number, relHum: number, pressurePa: number): number;
    GetHumRatioFromRelHum(tDryBulbC: number, relHum: number, pressurePa: number): number;
    GetStandardAtmPressure(altitudeM: number): number;
    GetMoistAirDensity(tDryBulbC: number, humRatio: number, pressurePa: number): number;
  };
  export default psychrolib;
}

declare module 'ws' {
  export const WebSocket: new (address: string) => unknown;
}
