using Loadmark.Storage.Tests.Damage;

namespace Loadmark.Bench;

/// <summary>Damages copies of a store at random and counts what the program makes of them.</summary>
internal static class DamageBench
{
    /// <summary>Damages so many copies; 1 where one broke the program, was made worse or was not told.</summary>
    public static int Run(int damages) => RunAsync(damages).GetAwaiter().GetResult();

    private static async Task<int> RunAsync(int damages)
    {
        var folder = Directory.CreateTempSubdirectory("loadmark-damage-").FullName;
        try
        {
            var trial = await DamageTrial.MakeAsync(folder);
            var kinds = Enum.GetValues<DamageKind>();
            var runs = new List<DamageRun>();
            for (var seed = 0; seed < damages; seed++)
                runs.Add(await trial.RunAsync(kinds[seed % kinds.Length], seed / kinds.Length, folder));
            var outcomes = Enum.GetValues<DamageOutcome>();
            var table = new ResultTable(
                "Damaged stores",
                $"{damages:N0} copies of a store of 12 rigs with 10 edits each and 20 pieces of gear, each damaged once, opened, read whole, added to and backed up. Harmless: all reads as it was kept, "
                + "the last edits, which are in the log only, among it. A damaged backup is restored over a whole store. Salvaged: refused, and what can still be read is in a new store that opens, with nothing in it that was never kept. Silent: something reads otherwise, and nobody is told.",
                ["damage", .. outcomes.Select(static outcome => $"{outcome}")]);
            foreach (var kind in kinds)
                table.Add([$"{kind}", .. outcomes.Select(outcome => $"{runs.Count(run => run.Kind == kind && run.Outcome == outcome)}")]);
            table.Add(["all", .. outcomes.Select(outcome => $"{runs.Count(run => run.Outcome == outcome)}")]);
            table.Write("damage.md");
            foreach (var bad in runs.Where(static run => run.IsBad))
                Console.Error.WriteLine($"{bad.Outcome}: {bad.About}");
            return runs.Exists(static run => run.IsBad) ? 1 : 0;
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
