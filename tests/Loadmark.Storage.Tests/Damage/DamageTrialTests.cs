namespace Loadmark.Storage.Tests.Damage;

/// <summary>
/// Stores damaged at random are told, or read as far as they can be, and never made worse. The bench <c>damage</c> tries a thousand of them.
/// </summary>
public sealed class DamageTrialTests(ITestOutputHelper output) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task No_damage_breaks_the_program_or_is_made_worse()
    {
        var trial = await DamageTrial.MakeAsync(_folder.Path);
        var runs = new List<DamageRun>();
        for (var at = 0; at < DamageTrial.HeaderSize; at++)
            runs.Add(await trial.RunAsync(DamageKind.Header, at, _folder.Path));
        var others = Enum.GetValues<DamageKind>().Where(static kind => kind != DamageKind.Header).ToArray();
        for (var seed = 1; seed <= Rounds.Of(300); seed++)
            runs.Add(await trial.RunAsync(others[seed % others.Length], seed, _folder.Path));

        foreach (var kind in runs.GroupBy(static run => run.Kind))
            output.WriteLine($"{kind.Key}: " + string.Join(", ", kind.CountBy(static run => run.Outcome).Select(static pair => $"{pair.Value} {pair.Key}")));
        var bad = runs.FindAll(static run => run.IsBad);
        Assert.True(bad.Count == 0, $"{bad.Count} of {runs.Count}\n{string.Join("\n\n", bad.Take(5).Select(static run => $"{run.Outcome}: {run.About}"))}");
        Assert.True(runs.Count(static run => run.Outcome is DamageOutcome.Refused or DamageOutcome.Salvaged) > runs.Count / 5, "Hardly any damage was one.");
    }
}
