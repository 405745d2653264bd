using Loadmark.Bench;

// dotnet run -c Release --project bench/Loadmark.Bench -- [startup|speed|buying|fuzz [COUNT]]
// Writes its tables to bench/results; run from the project's root.
return args switch
{
    ["startup"] => StartupBench.Run(),
    ["speed"] => SpeedBench.Run(),
    ["buying"] => BuyingBench.Run(),
    ["fuzz"] => Fuzz.Run(1_000_000),
    ["fuzz", var count] when int.TryParse(count, out var inputs) && inputs > 0 => Fuzz.Run(inputs),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("usage: startup | speed | buying | fuzz [COUNT]");
    return 2;
}
