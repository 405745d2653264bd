using Loadmark.Bench;

// dotnet run -c Release --project bench/Loadmark.Bench -- [startup|speed|circuits|fuzz [COUNT]]
// Writes its tables to bench/results; run from the project's root.
return args switch
{
    ["startup"] => StartupBench.Run(),
    ["speed"] => SpeedBench.Run(),
    ["circuits"] => CircuitsBench.Run(),
    ["fuzz"] => Fuzz.Run(1_000_000),
    ["fuzz", var count] when int.TryParse(count, out var inputs) && inputs > 0 => Fuzz.Run(inputs),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: startup | speed | circuits | fuzz [COUNT]");
    return 2;
}
