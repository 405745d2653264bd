using System.Globalization;
using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Files.PriceLists;
using Loadmark.Outputs;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Sources;
using Loadmark.Workshop.Sheets;

namespace Loadmark.Commands;

/// <summary><c>loadmark sheet</c>: the paper that goes with a rig.</summary>
internal sealed class SheetCommand(CommandInput input)
{
    private static readonly OptionSpec Out = new(
        "out", OptionKind.Text, "Write it to this file: PDF, SVG or PNG by the end of its name; - for standard output.")
    {
        Placeholder = "FILE",
        Needs = "the name of a file",
        IsRequired = true,
        With = CommonOptions.Force,
    };

    private static readonly OptionSpec As = new(
        "as", OptionKind.Text, "What kind of file, whatever its name: pdf, svg or png. Standard output is PDF without it.")
    { Placeholder = "KIND", Needs = "pdf, svg or png" };

    private static readonly OptionSpec Dots = new(
        "dpi", OptionKind.Number, "How fine a PNG is, in dots an inch, 36 to 600; 150 if not given.")
    { Placeholder = "N" };

    private static readonly OptionSpec Date = new(
        "date",
        OptionKind.Text,
        "The day that it says it was made on, such as 2026-11-30; today if not given. All else equal, the file is equal.")
    { Placeholder = "DAY", Needs = "a day such as 2026-11-30" };

    private static readonly OptionSpec Prices = new(
        "prices", OptionKind.Text, "Your price list (docs/price-list.md): the shopping list then says what it has of what is to be bought.")
    { Placeholder = "CSV", Needs = "the name of a file" };

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = QuestionSpecs.Sheet.Text,
        Parameters = [RigParameter.Wired],
        Options = [Out, .. QuestionSpecs.Sheet.Options, Prices, As, Dots, Date],
        Needs = "the path of one rig file",
        WhyNoJson = "a sheet is paper, not JSON.",
        Example = "loadmark sheet examples/pit.rig.yaml --out pit.pdf",
        Documentation = "docs/sheet.md",
        AnswersAtOnce = true,
        Run = static input => new SheetCommand(input).Run(),
    };

    /// <summary>Reads the rig, computes what is said of it, and writes its sheet.</summary>
    private int Run()
    {
        if (input.Words is not [var path])
            return input.Refuse();
        if (input.Text(Out) is not { } typed)
            return input.Refuse($"sheet needs {Out.Typed} with the name of a file.");
        var (complaints, force) = (input.Complaints, input.Has(CommonOptions.Force));
        if (KindOf(typed, out var kind) is { } unclear)
            return input.Refuse(unclear);
        if (ReadOptions(out var options) is { } unusable)
            return input.Refuse(unusable);
        if (ReadDots(out var dots) is { } unfit)
            return input.Refuse(unfit);

        var outputs = new OutputFiles(input.Process, input.Data);
        var file = typed == StandardInput.Mark ? null : typed;
        var prices = input.Text(Prices);
        if (file is not null && outputs.Complaint(file, Out.Typed, force, prices is null ? [path] : [path, prices]) is { } complaint)
            return complaints.Unusable(complaint);
        var (reading, text) = input.Rigs.ReadWithText(path, input.Rigs.Library);
        var list = prices is null ? new PriceListResult(null, []) : PricesFrom(prices);
        if (reading.Rig is not { } rig || list.Errors.Length > 0)
            return complaints.Unreadable(
                [
                    new CheckAnswer(path, null, reading.Errors),
                    .. prices is null ? [] : (CheckAnswer[])[new CheckAnswer(prices, null, list.Errors)],
                ],
                json: false);
        options = options with { Prices = list.Offers };

        options = options with { RigText = StandAloneText.Of(text!, rig, input.Rigs.Library) };
        var interruption = input.Process.Interruption();
        byte[] bytes;
        using (new WaitNotice(input.Process, "computing and setting the sheet"))
        {
            var document = SheetBuilder.Build(SheetFigures.Of(rig, interruption), options, interruption);
            interruption.ThrowIfCancellationRequested();
            bytes = SheetFile.Write(document, kind, dots);
        }

        TellMissing(SheetBuilder.MissingCharacters(rig));
        if (file is not null)
            return outputs.TrySave(file, bytes, force) ? ExitCode.Fine : ExitCode.Unreadable;
        input.Process.Output.Write(bytes);
        input.Process.Output.Flush();
        return ExitCode.Fine;
    }

    private PriceListResult PricesFrom(string path)
    {
        using var wait = InputWait.ForFile(input.Process, path);
        return PriceListReader.ReadFile(path, input.Process.Patience);
    }

    private string? KindOf(string file, out SheetFileKind kind)
    {
        kind = SheetFileKind.Pdf;
        var word = input.Text(As);
        if (word is null && file == StandardInput.Mark)
            return null;
        if (SheetFile.KindOf(word ?? Path.GetExtension(file)) is not { } known)
            return word is null
                ? $"{Out.Typed} {file}: the end of the name does not say what it is to be. Expected .pdf, .svg or .png; "
                    + $"else add {As.Typed} pdf."
                : $"{As.Typed}: expected pdf, svg or png, found \"{word}\".";
        kind = known;
        return null;
    }

    private string? ReadDots(out int dots)
    {
        dots = SheetFile.CommonDotsPerInch;
        return input.Text(Dots) is not { } typed
            || (int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out dots)
                && dots is >= SheetFile.LeastDotsPerInch and <= SheetFile.MostDotsPerInch)
            ? null
            : $"{Dots.Typed}: expected a number from {SheetFile.LeastDotsPerInch} to {SheetFile.MostDotsPerInch}, found \"{typed}\".";
    }

    private string? ReadOptions(out SheetOptions options)
    {
        options = new SheetOptions { Made = input.Process.Time.GetLocalNow() };
        if (input.Text(Date) is { } day)
        {
            var style = DateTimeStyles.AssumeUniversal;
            if (!DateTimeOffset.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, style, out var made))
                return $"{Date.Typed}: expected a day such as 2026-11-30, found \"{day}\".";
            options = options with { Made = made };
        }

        var typed = new TypedSheet
        {
            Only = input.Names(QuestionSpecs.SheetParts),
            Paper = input.Text(QuestionSpecs.Paper),
            Labels = input.Text(QuestionSpecs.LabelSizes),
            Contact = input.Text(QuestionSpecs.Contact),
            Reels = input.Names(QuestionSpecs.Reels),
            Ends = input.Text(QuestionSpecs.Ends),
            Cut = input.Text(QuestionSpecs.Cut),
        };
        var problem = TypedSheetOptions.Read(options, typed, out options);
        return problem is null ? null : $"--{problem}";
    }

    private void TellMissing(IReadOnlyList<(string Character, string Text)> missing)
    {
        foreach (var (character, text) in missing.Take(10))
            input.Process.Error.WriteLine(
                $"loadmark: the typeface of the sheet has no {TerminalText.Neutral(character)} (U+{char.ConvertToUtf32(character, 0):X4}, "
                + $"in {TerminalText.Neutral(text)}): it shows as a box.");
        if (missing.Count > 10)
            input.Process.Error.WriteLine($"loadmark: and {missing.Count - 10} characters more.");
    }
}
