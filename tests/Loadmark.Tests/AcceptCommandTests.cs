using System.Text.Json;

namespace Loadmark.Tests;

/// <summary><c>loadmark accept</c>: was it built as drawn?</summary>
public sealed class AcceptCommandTests : IDisposable
{
    private static readonly string Pit = Repository.PathOf("examples", "pit.rig.yaml");
    private static readonly string Readings = Repository.PathOf("examples", "pit.readings.csv");

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-accept-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void What_is_to_be_measured_is_told_before() =>
        Expected.Matches("accept-pit.txt", Run(1, "accept", Pit).Output);

    [Fact]
    public void The_readings_of_the_example_are_accepted()
    {
        Assert.Contains("accepted  Built as drawn", Run(0, "accept", Pit, "--readings", Readings).Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run(0, "accept", Pit, "--readings", Readings, "--json").Output);
        Assert.Equal("accepted", json.RootElement.GetProperty("verdict").GetString());
        Assert.Equal(21, json.RootElement.GetProperty("points").GetArrayLength());
    }

    /// <summary>The form that is written is read again, with nothing measured.</summary>
    [Fact]
    public void The_blank_form_can_be_filled_in()
    {
        var file = Path.Combine(_folder, "blank.csv");
        File.WriteAllText(file, Run(0, "accept", Pit, "--blank").Output);
        Assert.Contains("Not measured yet", Run(1, "accept", Pit, "--readings", file).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_reading_refuses_and_what_is_not_read_has_its_place()
    {
        var file = Path.Combine(_folder, "r.txt");
        File.WriteAllText(file, "volts accuracy: 0.5 % + 2 digits\nfuzz-1: -9.05");
        Assert.Contains("Reversed", Run(1, "accept", Pit, "--readings", file).Output, StringComparison.Ordinal);
        File.WriteAllText(file, "fuzz-2: -9.05");
        Assert.Contains(":1:1: 'fuzz-2'", Run(2, "accept", Pit, "--readings", file).Error, StringComparison.Ordinal);
        Run(2, "accept", Pit, "--readings", Path.Combine(_folder, "none"));
        Run(2, "accept", Pit, "--blank", "--json");
    }

    private static ProgramRun.Answer Run(int code, params string[] args)
    {
        var answer = ProgramRun.Answering(TestContext.Current.CancellationToken, args);
        Assert.True(answer.Code == code, $"{answer.Code}: {answer.Error}");
        return answer;
    }
}
