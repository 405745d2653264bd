using Loadmark.Bench;

// dotnet run -c Release --project bench/Loadmark.Bench -- [house|startup|sheet|codes|speed|api|drawing|storage|kills [COUNT]|sessions [SECONDS]|library [PIECES RIGS]|buying|cutting|circuits|simulation|fuzz [COUNT]|oracle [RIGS]|verdicts|rounds|damage [COUNT]|sizes [CAP]|planning [SEEDS] [--sizes 6,12] [--alone]]
// Writes its tables to bench/results; run from the project's root.
return args switch
{
    ["house"] => HouseBench.Run(),
    ["startup"] => StartupBench.Run(),
    ["sheet"] => SheetBench.Run(),
    ["codes"] => CodesBench.Run(),
    ["speed"] => SpeedBench.Run(),
    ["api"] => ApiBench.Run(),
    ["drawing"] => DrawingBench.Run(),
    ["circuits"] => CircuitsBench.Run(),
    ["simulation"] => SimulationBench.Run(),
    ["storage"] => StorageBench.Run(),
    ["kills"] => KillsBench.Run(1000),
    ["kills", var count] when int.TryParse(count, out var kills) && kills > 0 => KillsBench.Run(kills),
    ["kills-child", var folder, var id] => await KillsBench.SaveForeverAsync(folder, Guid.Parse(id)),
    ["sessions"] => SessionsBench.Run(60),
    ["sessions", var length] when int.TryParse(length, out var seconds) && seconds > 0 => SessionsBench.Run(seconds),
    ["library"] => LibraryBench.Run(20_000, 5_000),
    ["library", var pieces, var rigs] when int.TryParse(pieces, out var manyPieces) && int.TryParse(rigs, out var manyRigs) => LibraryBench.Run(manyPieces, manyRigs),
    ["buying"] => BuyingBench.Run(),
    ["cutting"] => CuttingBench.Run(),
    ["fuzz"] => Fuzz.Run(1_000_000),
    ["fuzz", var count] when int.TryParse(count, out var inputs) && inputs > 0 => Fuzz.Run(inputs),
    ["sizes"] => SizesBench.Run(60),
    ["sizes", var cap] when int.TryParse(cap, out var capSeconds) && capSeconds > 0 => SizesBench.Run(capSeconds),
    ["oracle"] => OracleBench.Run(5_000),
    ["oracle", var count] when int.TryParse(count, out var oracleRigs) && oracleRigs > 0 => OracleBench.Run(oracleRigs),
    ["verdicts"] => VerdictsBench.Run(),
    ["rounds"] => RoundsBench.Run(),
    ["reproducible"] => ReproducibleBench.Run(),
    ["damage"] => DamageBench.Run(1_000),
    ["damage", var count] when int.TryParse(count, out var damages) && damages > 0 => DamageBench.Run(damages),
    ["planning", .. var rest] when PlanningBenchOptions.Read(rest) is { } options => PlanningBench.Run(options),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: house | startup | sheet | codes | speed | api | drawing | storage | kills [COUNT] | sessions [SECONDS] | library [PIECES RIGS] | buying | cutting | circuits | simulation | fuzz [COUNT] | oracle [RIGS] | verdicts | rounds | reproducible | damage [COUNT] | sizes [CAP] | planning [SEEDS] [--sizes 6,12,20] [--alone]");
    return 2;
}
