using System.Text;
using System.Text.Json;

namespace Loadmark.Tests;

/// <summary>Every command that takes a rig takes it from standard input too.</summary>
public sealed class StandardInputTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-input-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("check", "-")]
    [InlineData("plan", "-")]
    [InlineData("settle", "-")]
    [InlineData("startup", "-")]
    [InlineData("netlist", "-")]
    [InlineData("rigs", "import", "-")]
    [InlineData("gear", "add", "--from", "-")]
    public void Is_read_by_every_command_that_takes_a_rig(params string[] args)
    {
        var (code, output, error) = Run(SmallBoard.Text, args);
        Assert.Equal(("", 0), (error, code));
        Assert.NotEmpty(output);
    }

    [Fact]
    public void Is_read_by_buy()
    {
        var prices = Path.Combine(_folder, "prices.csv");
        File.WriteAllText(prices, "supply,price,label\nwall,9,9V DC 500mA centre negative\n");
        Assert.Equal(0, Run(SmallBoard.Text, "buy", "-", "--prices", prices).Code);
    }

    [Fact]
    public void May_be_JSON_and_may_begin_with_a_byte_order_mark()
    {
        const string json = """{"rig":"Small board","loads":{"drive-3":"9V DC 12mA"},"supplies":{"adaptor":"9V 2A"},"wired":[{"from":"adaptor","to":"drive-3"}]}""";
        using var answer = JsonDocument.Parse(Run("\uFEFF" + json, "check", "-", "--json").Output);
        Assert.Equal("Small board", answer.RootElement.GetProperty("rig").GetString());
        Assert.Equal("-", answer.RootElement.GetProperty("file").GetString());
    }

    [Fact]
    public void Gives_the_text_that_a_plan_is_written_into()
    {
        var planned = Path.Combine(_folder, "planned.rig.yaml");
        Assert.Equal(0, Run(SmallBoard.Text, "plan", "-", "--write", planned).Code);
        Assert.Equal(SmallBoard.Planned, File.ReadAllText(planned));
    }

    [Theory]
    [InlineData("rig: a\nloads:\n  x: { run: 5 }\n", "standard input, line 3, column 13: run: expected a current such as 300 mA, found \"5\"; the unit is missing (A)\n")]
    [InlineData("", "standard input, line 1, column 1: the file is empty; expected a rig, which begins with 'rig: ' and its name\n")]
    public void Is_named_in_words_where_it_cannot_be_read(string text, string expected)
    {
        var (code, _, error) = Run(text, "check", "-");
        Assert.Equal((2, expected), (code, error));
    }

    [Fact]
    public void Is_named_in_words_in_other_complaints() =>
        Assert.Equal("loadmark: --only: there is no supply 'brick' in standard input.\n", Run(SmallBoard.Text, "plan", "-", "--only", "brick").Error);

    [Fact]
    public void Without_an_end_it_is_refused_once_it_is_larger_than_any_rig()
    {
        var (code, _, error) = Run(new Endless(), "check", "-");
        Assert.Equal((2, "standard input: the file is over 1 MiB; a rig file is never that large\n"), (code, error));
    }

    [Fact]
    public void A_file_that_is_not_there_has_no_place()
    {
        var path = Path.Combine(_folder, "none.rig.yaml");
        var (code, output, error) = Run("", "check", path, "--json");
        Assert.Equal((2, $"{path}: there is no such file\n"), (code, error));
        using var answer = JsonDocument.Parse(output);
        Assert.Equal(JsonValueKind.Null, answer.RootElement.GetProperty("errors")[0].GetProperty("line").ValueKind);
    }

    private (int Code, string Output, string Error) Run(string input, params string[] args) => Run(new MemoryStream(Encoding.UTF8.GetBytes(input)), args);

    private (int Code, string Output, string Error) Run(Stream input, params string[] args) => LibraryRun.In(Path.Combine(_folder, "data"), TimeProvider.System, input, args);

    /// <summary>Gives as many bytes as anybody asks for.</summary>
    private sealed class Endless : MemoryStream
    {
        public override bool CanSeek => false;

        public override int Read(byte[] buffer, int offset, int count)
        {
            buffer.AsSpan(offset, count).Fill((byte)'a');
            return count;
        }
    }
}
