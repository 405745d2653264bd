using System.Text.Json;

namespace Loadmark.Tests;

/// <summary><c>loadmark restore-sheet</c>: the rig file back from its sheet.</summary>
public sealed class RestoreSheetCommandTests : IDisposable
{
    private static readonly string Pit = Repository.PathOf("examples", "pit.rig.yaml");
    private static readonly string Festival = Repository.PathOf("examples", "festival.rig.yaml");

    private readonly string _folder = Directory.CreateTempSubdirectory("loadmark-restore-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_file_is_written_as_it_was_and_nothing_is_replaced_unasked()
    {
        var (sheet, back) = (Sheet(Pit, "pdf"), Path.Combine(_folder, "back.rig.yaml"));
        Assert.Equal(
            $"Restored Pit board, bass chair, rig e69aa655, from its code, to the letter. It is in {back}.",
            Run(0, "restore-sheet", sheet, "--out", back).Output.ReplaceLineEndings(" ").Trim());
        Assert.Equal(File.ReadAllBytes(Pit), File.ReadAllBytes(back));
        Assert.Contains("is there already", Run(2, "restore-sheet", sheet, "--out", back).Error, StringComparison.Ordinal);
        Assert.Contains("is what is read", Run(2, "restore-sheet", sheet, "--out", sheet, "--force").Error, StringComparison.Ordinal);
        Run(0, "restore-sheet", sheet, "--out", back, "--force");
    }

    [Fact]
    public void Without_a_file_it_goes_to_standard_output() =>
        Assert.Equal(File.ReadAllText(Festival), Run(0, "restore-sheet", Sheet(Festival, "png")).Output);

    [Fact]
    public void JSON_tells_what_was_found()
    {
        using var json = JsonDocument.Parse(Run(0, "restore-sheet", Sheet(Festival, "pdf"), "--json").Output);
        var root = json.RootElement;
        Assert.Equal(("Bandstand festival, all boards", "99a7b2ea", 2), (root.GetProperty("rig").GetString(), root.GetProperty("version").GetString(), root.GetProperty("codes").GetInt32()));
        Assert.Equal([1, 2], root.GetProperty("found").EnumerateArray().Select(static one => one.GetInt32()));
        Assert.Equal(File.ReadAllText(Festival), root.GetProperty("text").GetString());
        using var none = JsonDocument.Parse(Run(2, "restore-sheet", Sheet(Pit, "pdf", "diagram"), "--json").Output);
        Assert.StartsWith("No code of a sheet was found", Assert.Single(none.RootElement.GetProperty("errors").EnumerateArray().ToList()).GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("it is no picture that can be read", "rig: x")]
    [InlineData("the file is empty", "")]
    [InlineData("damaged or protected", "%PDF-1.7 and no more")]
    public void What_is_no_picture_is_told(string complaint, string text)
    {
        var file = Path.Combine(_folder, "x.png");
        File.WriteAllText(file, text);
        var error = Run(2, "restore-sheet", file).Error;
        Assert.Contains(complaint, error, StringComparison.Ordinal);
        Assert.Single(error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void A_file_that_is_not_there_has_its_name_told()
    {
        Assert.Contains("there is no such file", Run(2, "restore-sheet", Path.Combine(_folder, "none.png")).Error, StringComparison.Ordinal);
        Assert.Contains("restore-sheet needs the path of a picture", Run(2, "restore-sheet").Error, StringComparison.Ordinal);
    }

    /// <summary>Another rig is told, whichever file it comes in, and a file that cannot be read is never passed over.</summary>
    [Fact]
    public void What_is_beside_the_rig_is_told()
    {
        var (pit, festival, damaged) = (Sheet(Pit, "pdf"), Sheet(Festival, "pdf"), Path.Combine(_folder, "d.pdf"));
        Assert.Contains("codes of 2 rig files: 'Pit board, bass chair' with all of its codes and 'Bandstand festival", Run(2, "restore-sheet", pit, festival).Error, StringComparison.Ordinal);
        File.WriteAllText(damaged, "%PDF-1.7 and no more");
        var answer = Run(2, "restore-sheet", pit, damaged);
        Assert.Equal(File.ReadAllText(Pit), answer.Output);
        Assert.Contains("d.pdf: the PDF is damaged or protected", answer.Error, StringComparison.Ordinal);
    }

    /// <summary>What a rig takes from the library stands on its sheet, which may outlive the library.</summary>
    [Fact]
    public void Gear_of_the_library_is_written_out()
    {
        var (data, linked, sheet) = (Path.Combine(_folder, "data"), Path.Combine(_folder, "linked.rig.yaml"), Path.Combine(_folder, "linked.pdf"));
        File.WriteAllText(linked, "rig: linked # kept\nloads:\n  delay-2: { from: library }\n");
        InLibrary("gear", "add", "delay-2", "9V DC 300mA");
        InLibrary("sheet", linked, "--out", sheet, "--only", "codes");
        var text = InLibrary("restore-sheet", sheet);
        Assert.Contains("rig: linked # kept", text, StringComparison.Ordinal);
        Assert.Contains("300", text, StringComparison.Ordinal);
        Assert.DoesNotContain("library", text, StringComparison.Ordinal);

        string InLibrary(params string[] args)
        {
            var (code, output, error) = LibraryRun.In(data, TimeProvider.System, args);
            Assert.True(code == 0, error);
            return output;
        }
    }

    private string Sheet(string rig, string kind, string only = "codes")
    {
        var file = Path.Combine(_folder, $"{Path.GetFileName(rig)}.{only}.{kind}");
        Run(0, "sheet", rig, "--out", file, "--only", only);
        return file;
    }

    private static ProgramRun.Answer Run(int code, params string[] args)
    {
        var answer = ProgramRun.Answering(TestContext.Current.CancellationToken, args);
        Assert.True(answer.Code == code, $"{answer.Code}: {answer.Error}");
        return answer;
    }
}
