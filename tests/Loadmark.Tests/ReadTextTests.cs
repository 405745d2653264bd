using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Terminal;
using Loadmark.Processes;
using System.Text;

namespace Loadmark.Tests;

public sealed class ReadTextTests
{
    [Fact]
    public void A_reading_with_everything() => Expected.Matches("read-everything.txt", Page(DemoNameplates.Everything));

    [Fact]
    public void An_unclear_reading() => Expected.Matches("read-unclear.txt", Page(DemoNameplates.Unclear));

    [Fact]
    public void A_reading_of_several_outlets() => Expected.Matches("read-outlets.txt", Page(NameplateReader.Read(DemoNameplates.Outlets)));

    [Fact]
    public void An_empty_label() => Expected.Matches("read-empty.txt", Page(new Nameplate("")));

    [Fact]
    public void Lines_of_standard_input_are_read_one_by_one()
    {
        var bench = new ProgramRun { Input = "9V 12mA\n\n12V 1A\r\n" };
        Assert.Equal($"{bench.Run("read", "9V 12mA").Output}\n{bench.Run("read", "12V 1A").Output}", bench.Run("read", "-").Output);
        Assert.Equal(bench.Run("read", "--json", "9V 12mA").Output + bench.Run("read", "--json", "12V 1A").Output, bench.Run("read", "-", "--json").Output);
        Assert.Equal(2, bench.Run("read", "--json", "-").Output.Count(character => character == '\n'));
    }

    [Fact]
    public void Words_without_quotes_are_one_label() =>
        Assert.Equal(new ProgramRun().Run("read", "9V DC 300mA").Output, new ProgramRun().Run("read", "9V", "DC", "300mA").Output);

    [Fact]
    public void Standard_input_without_text_is_told() => Assert.Equal(2, new ProgramRun { Input = "\n \n" }.Run("read", "-").Code);

    [Fact]
    public void A_hostile_label_cannot_drive_the_terminal() =>
        Assert.DoesNotContain(new ProgramRun().Run("read", "9V\u001b[2J\u0007\r\n[red]\ud83d\u009b").Output, character => character != '\n' && char.IsControl(character));

    [Fact]
    public void Every_origin_has_a_word_of_its_own() =>
        Assert.Equal(Enum.GetValues<Origin>().Length, Enum.GetValues<Origin>().Select(OriginWords.Of).Distinct().Count());

    private static string Page(Nameplate nameplate)
    {
        using var output = new MemoryStream();
        var process = new ProcessContext { Output = output, Error = TextWriter.Null, Input = () => Stream.Null };
        SheetPrinter.Print(process, sheet => NameplatePage.Write(sheet, nameplate));
        return Encoding.UTF8.GetString(output.ToArray());
    }
}
