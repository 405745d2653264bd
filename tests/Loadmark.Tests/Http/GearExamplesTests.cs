using System.Text.RegularExpressions;

namespace Loadmark.Tests.Http;

/// <summary>The document's examples about the gear library are what is really answered, but for the ids of rigs.</summary>
public sealed partial class GearExamplesTests(SharedHost shared) : IClassFixture<SharedHost>
{
    private static readonly string Examples = Repository.PathOf("src", "Loadmark", "Api", "Examples");

    [Fact]
    public async Task They_are_what_is_answered()
    {
        await using var host = await RunningHost.StartAsync(clock: new FixedClock());
        using var rig = await host.PostAsync("/api/rigs", Read("board.rig.yaml"));
        using var added = await host.PostAsync("/api/gear", Read("gear.json"), "application/json");
        Assert.Equal((201, 201), ((int)rig.StatusCode, (int)added.StatusCode));
        await AssertAnsweredAsync("gear.yaml", null, await host.SendAsync(HttpMethod.Get, "/api/gear/load/delay-2", accept: "application/yaml"));
        await AssertAnsweredAsync("gear.yaml", null, await host.Client.GetAsync("/api/gear/export", RunningHost.Stop));
        await AssertAnsweredAsync("gear.export.csv", null, await host.Client.GetAsync("/api/gear/export?form=csv", RunningHost.Stop));
        await AssertAnsweredAsync("gear.measured.json", "GearMeasured", await host.PostAsync("/api/gear/load/delay-2/readings", Read("gear.reading.json"), "application/json"));
        await AssertAnsweredAsync("gear.show.json", "GearShown", await host.Client.GetAsync("/api/gear/load/delay-2", RunningHost.Stop));
        await AssertAnsweredAsync("gear.list.json", "GearList", await host.Client.GetAsync("/api/gear?words=dealy", RunningHost.Stop));
        await AssertAnsweredAsync("gear.affected.json", "RigsAffected", await host.Client.GetAsync("/api/gear/load/delay-2/affected", RunningHost.Stop));
        await AssertAnsweredAsync("gear.import.json", "GearTaken", await host.PostAsync("/api/gear/import", Read("gear.csv"), "text/csv"));
    }

    private static string Read(string name) => File.ReadAllText(Path.Combine(Examples, name));

    private async Task AssertAnsweredAsync(string name, string? shape, HttpResponseMessage answer)
    {
        using (answer)
        {
            var text = Ids().Replace(await answer.Content.ReadAsStringAsync(RunningHost.Stop), "019ac0de-0000-7000-8000-000000000003");
            Assert.True(answer.IsSuccessStatusCode, text);
            if (shape is not null)
                shared.Shapes.AssertFits(shape, text);
            if (Environment.GetEnvironmentVariable("LOADMARK_UPDATE_EXPECTED") == "1")
                await File.WriteAllTextAsync(Path.Combine(Examples, name), text, RunningHost.Stop);
            Assert.Equal(Read(name), text);
        }
    }

    [GeneratedRegex("(?<=\"id\":\")[0-9a-f-]{36}(?=\")", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ids();
}
