using System.Text.Json;
using Loadmark.Core.Checks;
using Loadmark.Files;

namespace Loadmark.Tests;

/// <summary>The plan command on real rig files.</summary>
public sealed class PlanCommandTests : IDisposable
{
    private const string Text =
        """
        # A comment that must stay.
        rig: Small board
        loads:
          drive-3: { kind: analog drive, label: "9V DC 12mA centre negative 5.5x2.1" }   # and this one
          delay-2: { kind: digital, label: "9V DC 300mA centre negative 5.5x2.1", start: 400 mA for 1 s }
        supplies:
          brick:
            isolated: true
            outlets:
              1: { label: 9 V DC 100 mA, polarity: centre negative, plug: 5.5x2.1 }
              2: { label: 9 V DC 500 mA; 12 V DC 400 mA, polarity: centre negative, plug: 5.5x2.1 }
          wall: { label: "OUTPUT 9V DC 200mA centre negative 5.5x2.1", outlets: { 1: "" } }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-plan-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Answers_in_the_keys_of_the_contract()
    {
        var answer = Run(0, "plan", Save(), "--json");
        using var json = JsonDocument.Parse(answer);
        Assert.Equal(["status", "feeds", "toBuy", "unfed", "reasons", "lacks", "changes", "moves", "objective"], json.RootElement.EnumerateObject().Select(property => property.Name));
        Assert.Equal("optimal", json.RootElement.GetProperty("status").GetString());
        var feed = json.RootElement.GetProperty("feeds")[1];
        Assert.Equal("""{"from":["brick/2"],"joined":null,"volts":9,"lead":"straight","to":["delay-2"]}""", feed.GetRawText());
        Assert.All(json.RootElement.GetProperty("objective").EnumerateArray(), level => Assert.Equal(level.GetProperty("value").GetDecimal(), level.GetProperty("bound").GetDecimal()));
    }

    [Fact]
    public void Writes_the_wiring_and_keeps_the_comments()
    {
        var target = Path.Combine(_folder, "planned.rig.yaml");
        Run(0, "plan", Save(), "--write", target);
        var written = File.ReadAllText(target);
        Assert.StartsWith("# A comment that must stay.", written, StringComparison.Ordinal);
        Assert.Contains("# and this one", written, StringComparison.Ordinal);
        var rig = RigFileReader.Read(written, target).Rig;
        Assert.NotNull(rig);
        Assert.False(NameplateCheck.Of(rig).IsRefused);
    }

    [Fact]
    public void Plans_with_one_supply_only_and_says_what_stays_dark()
    {
        var text = Run(1, "plan", Save(), "--only", "wall");
        Assert.Contains("Not fed: delay-2.", text, StringComparison.Ordinal);
        Assert.Contains("What stands in the way", text, StringComparison.Ordinal);
        Assert.Contains("No outlet here gives delay-2", text, StringComparison.Ordinal);
        Assert.Contains("9 V 400 mA: delay-2", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Says_what_changes_against_the_wiring_in_the_file()
    {
        var path = Save();
        File.AppendAllText(path, "\nwired:\n  - { from: brick/2, at: 9 V, to: drive-3 }\n");
        var text = Run(0, "plan", path);
        Assert.Contains("drive-3: from brick/2 at 9 V to brick/1", text, StringComparison.Ordinal);
        Assert.Contains("delay-2: not fed now, to brick/2 at 9 V", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Leaves_what_is_wired_where_that_is_asked_for()
    {
        var path = Save();
        File.AppendAllText(path, "\nwired:\n  - { from: brick/2, at: 9 V, to: drive-3 }\n");
        using var anew = JsonDocument.Parse(Run(0, "plan", path, "--json"));
        Assert.Equal(
            """[{"load":"drive-3","from":["brick/2 at 9 V"],"to":"brick/1"},{"load":"delay-2","from":[],"to":"brick/2 at 9 V"}]""",
            anew.RootElement.GetProperty("moves").GetRawText());

        // The large outlet is needed by the delay: one move is the least, and is proven.
        var text = Run(0, "plan", path, "--fewest-moves");
        Assert.Contains("wired loads moved: 1 (proven)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_nobody_has_yet_is_marked()
    {
        var path = Path.Combine(_folder, "shopping.rig.yaml");
        File.WriteAllText(path, """
            rig: Shopping
            loads: { drive-3: 9V DC 12mA centre negative 5.5x2.1, drive-4: 9V DC 12mA centre negative 5.5x2.1 }
            supplies: { wall-9: { to_buy: true, isolated: true, outlets: { 1: 9 V DC 150 mA centre negative 5.5x2.1 } } }
            leads: { chain: { type: daisy chain, plugs: 2, to_buy: true } }

            """);
        var planned = Path.Combine(_folder, "bought.rig.yaml");
        var text = Run(0, "plan", path, "--write", planned);
        Assert.Contains("over chain (to buy) to drive-3, drive-4", text, StringComparison.Ordinal);
        Assert.Contains("Yet to be bought: wall-9, chain.", text, StringComparison.Ordinal);
        Assert.Contains("to_buy: true", File.ReadAllText(planned), StringComparison.Ordinal);
        Assert.Contains("Yet to be bought: wall-9, chain.", Run(0, "check", planned), StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run(0, "check", planned, "--json"));
        Assert.Equal("""["wall-9","chain"]""", json.RootElement.GetProperty("toBuy").GetRawText());
    }

    [Fact]
    public void Boards_keep_to_themselves_unless_they_may_not()
    {
        var path = Path.Combine(_folder, "boards.rig.yaml");
        File.WriteAllText(path, """
            rig: Boards
            loads: { drive-3: { label: 9V DC 12mA centre negative 5.5x2.1, board: bass } }
            supplies: { wall-9: { board: voice, isolated: true, outlets: { 1: 9 V DC 150 mA centre negative 5.5x2.1 } } }

            """);
        Assert.Contains("wall-9/1: it is of the board voice.", Run(1, "plan", path).ReplaceLineEndings(" ").Replace("   ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Run(0, "plan", path, "--across-boards");
    }

    [Fact]
    public void Interrupted_it_answers_with_the_best_so_far_and_claims_nothing()
    {
        var (code, text) = ProgramRun.WithFiles(new CancellationToken(canceled: true), "plan", Save());
        Assert.Equal(130, code);
        Assert.Contains("to drive-3", text, StringComparison.Ordinal);
        Assert.Contains("was not settled in the time", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_supply_that_is_not_there_is_an_error() => Run(2, "plan", Save(), "--only", "brik");

    [Fact]
    public void A_rig_that_cannot_be_read_is_an_error() => Run(2, "plan", Path.Combine(_folder, "none.yaml"));

    [Fact]
    public void One_rig_at_a_time() => Run(2, "plan", Save(), Save());

    private string Save()
    {
        var path = Path.Combine(_folder, "board.rig.yaml");
        File.WriteAllText(path, Text);
        return path;
    }

    private static string Run(int code, params string[] args)
    {
        var (exit, output) = ProgramRun.WithFiles(args);
        Assert.Equal(code, exit);
        return output;
    }
}
