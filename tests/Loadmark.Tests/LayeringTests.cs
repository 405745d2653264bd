using System.Xml.Linq;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Loadmark.Tests.House;

namespace Loadmark.Tests;

/// <summary>The arrows between the projects point down only.</summary>
public sealed class LayeringTests
{
    private static readonly Architecture Code = new ArchLoader()
        .LoadAssemblies(typeof(Core.Rigs.Rig).Assembly, LoadFiles(), typeof(Workshop.Library.GearSnapshot).Assembly, typeof(Commands.LoadmarkCommand).Assembly)
        .Build();

    /// <summary>What each project may refer to: projects, then packages. Whoever adds one gives the reason in docs/dependencies.md.</summary>
    private static readonly Dictionary<string, (string[] Projects, string[] Packages)> Allowed = new()
    {
        ["Loadmark.Core"] = ([], []),
        ["Loadmark.Circuits"] = ([], []),
        ["Loadmark.Simulation"] = (["Loadmark.Circuits", "Loadmark.Core"], []),
        ["Loadmark.Files"] = (["Loadmark.Core"], ["CsvHelper", "YamlDotNet"]),
        ["Loadmark.Planning"] = (["Loadmark.Core"], ["Google.OrTools"]),
        ["Loadmark.Storage"] = (["Loadmark.Core"], ["Microsoft.EntityFrameworkCore.Sqlite", "Microsoft.EntityFrameworkCore.Design", "System.IO.Hashing"]),
        ["Loadmark.Meters"] = ([], ["System.IO.Ports"]),
        ["Loadmark.Drawing"] = (["Loadmark.Core"], ["PDFsharp", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies"]),
        ["Loadmark.Codes"] = ([], ["PdfPig", "QRCoder", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies", "ZXing.Net"]),
        ["Loadmark.Workshop"] = (["Loadmark.Codes", "Loadmark.Core", "Loadmark.Drawing", "Loadmark.Files", "Loadmark.Planning", "Loadmark.Simulation", "Loadmark.Storage"], []),
        ["Loadmark.Web"] = (["Loadmark.Codes", "Loadmark.Core", "Loadmark.Drawing", "Loadmark.Files", "Loadmark.Meters", "Loadmark.Planning", "Loadmark.Simulation", "Loadmark.Storage", "Loadmark.Workshop"], ["Markdig", "MudBlazor"]),
        ["Loadmark"] = (
            [
                "Loadmark.Codes", "Loadmark.Core", "Loadmark.Files", "Loadmark.Meters", "Loadmark.Planning", "Loadmark.Simulation", "Loadmark.Storage",
                "Loadmark.Web", "Loadmark.Workshop",
            ],
            ["Microsoft.AspNetCore.OpenApi", "Spectre.Console", "System.CommandLine"]),
    };

    /// <summary>Folders that may need each other, and why no move of files would part them. All others must not.</summary>
    private static readonly Dictionary<string, string[][]> Circles = new(StringComparer.Ordinal)
    {
        ["Loadmark.Core"] =
        [
            // The front lists the rules; the rules report in its words.
            ["Loadmark.Core.Checks", "Loadmark.Core.Checks.Rules"],

            // The front calls the lexer and the grammar; these make the nameplate that it hands out.
            ["Loadmark.Core.Nameplates", "Loadmark.Core.Nameplates.Parsing"],
        ],

        // An element writes itself into the equations, the equations are made of the elements of a network: one thing, seen from three sides.
        ["Loadmark.Circuits"] = [["Loadmark.Circuits.Analyses", "Loadmark.Circuits.Devices", "Loadmark.Circuits.Networks"]],
    };

    /// <summary>The projects, by name.</summary>
    public static TheoryData<string> Projects => [.. Allowed.Keys];

    [Fact]
    public void Core_depends_on_no_other_project() => AssertFreeOf("Loadmark.Core", target => Layer(target) is { } layer && layer != "Loadmark.Core");

    [Fact]
    public void Core_has_no_input_output_or_user_interface() => AssertFreeOf("Loadmark.Core", IsOutsideWorld);

    [Fact]
    public void Files_depends_on_Core_only() => AssertFreeOf("Loadmark.Files", target => Layer(target) is { } layer && layer is not ("Loadmark.Core" or "Loadmark.Files"));

    [Fact]
    public void Files_knows_no_console() =>
        AssertFreeOf("Loadmark.Files", target => target.FullName.StartsWith("Spectre.", StringComparison.Ordinal) || target.FullName == "System.Console");

    /// <summary>So that the same could be hosted elsewhere than in a web server or at a terminal (decision 18).</summary>
    [Theory]
    [InlineData("Microsoft.AspNetCore")]
    [InlineData("Spectre")]
    [InlineData("System.CommandLine")]
    public void Workshop_knows_no_web_server_and_no_terminal(string space)
    {
        AssertFreeOf("Loadmark.Workshop", target => IsWithin(target, space) || target.FullName == "System.Console");
        Assert.DoesNotContain(
            typeof(Workshop.Library.GearSnapshot).Assembly.GetReferencedAssemblies(),
            reference => reference.Name is { } name && (name == space || name.StartsWith(space + ".", StringComparison.Ordinal)));
        Assert.Contains(
            Code.Types.Where(type => Layer(type) == "Loadmark").SelectMany(type => type.Dependencies),
            dependency => IsWithin(dependency.Target, space));
    }

    [Theory]
    [InlineData("Spectre.Console", "Loadmark.Terminal")]
    [InlineData("System.CommandLine", "Loadmark.CommandLines")]
    [InlineData("Microsoft.OpenApi", "Loadmark.Api.Description")]
    public void A_package_of_the_program_is_used_in_one_folder_only(string package, string folder)
    {
        var users = Code.Types.Where(type => Layer(type) == "Loadmark" && type.Dependencies.Any(dependency => IsWithin(dependency.Target, package))).ToList();
        Assert.NotEmpty(users);
        Assert.All(users, type => Assert.Equal(folder, type.Namespace.FullName));
    }

    [Fact]
    public void Answers_in_JSON_need_no_console() =>
        Assert.DoesNotContain(
            Code.Types.Where(type => type.Namespace.FullName is "Loadmark.Answers" or "Loadmark.Shapes").SelectMany(type => type.Dependencies),
            dependency => IsWithin(dependency.Target, "Spectre.Console") || IsWithin(dependency.Target, "Loadmark.Terminal"));

    [Fact]
    public void The_rule_about_input_and_output_finds_it_where_it_is() =>
        Assert.Contains(
            Code.Types.Where(type => Layer(type) == "Loadmark").SelectMany(type => type.Dependencies),
            dependency => IsOutsideWorld(dependency.Target));

    [Fact]
    public void Each_project_refers_to_what_it_may()
    {
        foreach (var path in Directory.EnumerateFiles(Repository.PathOf("src"), "*.csproj", SearchOption.AllDirectories))
        {
            var name = Path.GetFileNameWithoutExtension(path);
            Assert.True(Allowed.TryGetValue(name, out var allowed), $"{name} is not in the list of projects");
            var project = XDocument.Load(path);
            var projects = Includes(project, "ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(reference.Replace('\\', '/')));
            Assert.Empty(projects.Except(allowed.Projects));
            Assert.Empty(Includes(project, "PackageReference").Except(allowed.Packages));
        }
    }

    [Fact]
    public void A_folder_is_a_namespace()
    {
        foreach (var path in Directory.EnumerateFiles(Repository.PathOf("src"), "*.cs", SearchOption.AllDirectories))
        {
            var parts = Path.GetRelativePath(Repository.PathOf("src"), path).Split(Path.DirectorySeparatorChar);
            if (parts[1..^1].Intersect(["obj", "bin"]).Any() || parts[^1] == "Program.cs")
                continue;

            var line = File.ReadLines(path).FirstOrDefault(text => text.StartsWith("namespace ", StringComparison.Ordinal));
            // Migrations are as their tool writes them: with a brace on the next line.
            Assert.True(line?.TrimEnd(';') == $"namespace {string.Join('.', parts[..^1])}", $"{string.Join('/', parts)} has {line}");
        }
    }

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_folders_need_each_other_in_a_circle(string project)
    {
        var assembly = System.Reflection.Assembly.Load(project == "Loadmark" ? "loadmark" : project);
        var graph = NamespaceGraph.Of(assembly, SourceTree.Read(Repository.Root));
        Assert.True(graph.Count > 1);
        var allowed = Circles.GetValueOrDefault(project, []).Select(static set => string.Join(", ", set));
        var found = graph.Cycles().ToDictionary(static set => string.Join(", ", set), static set => set, StringComparer.Ordinal);
        var wrong = found.Keys.Except(allowed, StringComparer.Ordinal).ToList();
        Assert.True(wrong.Count == 0, string.Join('\n', wrong.SelectMany(set => graph.Arrows(found[set]).Prepend($"{set} need each other:"))));
        Assert.Empty(allowed.Except(found.Keys, StringComparer.Ordinal));
    }

    [Fact]
    public void Code_of_a_component_that_is_long_stands_beside_it()
    {
        var tooLong = SourceTree.Read(Repository.Root)
            .Where(static file => file.Path.EndsWith(".razor", StringComparison.Ordinal) && CodeBehind.LinesOf(file.Lines) > CodeBehind.MostLines)
            .Select(static file => $"{file.Path}: {CodeBehind.LinesOf(file.Lines)} lines of @code, at most {CodeBehind.MostLines}");
        Assert.Empty(tooLong);
    }

    /// <summary>As a tool writes them, migrations have what lines they have.</summary>
    [Fact]
    public void A_line_ends_at_140_columns() =>
        Assert.Empty(SourceTree.Read(Repository.Root)
            .Where(static file => !file.IsMigration)
            .SelectMany(static file => file.WideLines.Select(line => $"{file.Path}:{line}")));

    [Fact]
    public void A_name_is_of_one_file_only()
    {
        var namesakes = SourceTree.Namesakes(SourceTree.Read(Repository.Root));
        Assert.True(namesakes.Count == 0, string.Join('\n', namesakes.Select(static names => string.Join(", ", names.Select(static file => file.Path)))));
    }

    private static System.Reflection.Assembly LoadFiles() => System.Reflection.Assembly.Load("Loadmark.Files");

    private static IEnumerable<string> Includes(XDocument project, string element) =>
        project.Descendants(element).Select(reference => reference.Attribute("Include")?.Value ?? "");

    private static void AssertFreeOf(string layer, Func<IType, bool> forbidden)
    {
        var types = Code.Types.Where(type => Layer(type) == layer).ToList();
        Assert.NotEmpty(types);
        Assert.DoesNotContain(types.SelectMany(type => type.Dependencies).Where(dependency => forbidden(dependency.Target)), _ => true);
    }

    /// <summary>The project of this program that a type belongs to; null for all other types.</summary>
    private static string? Layer(IType type)
    {
        var name = type.Assembly?.Name.Split(',')[0] ?? "";
        return name.Equals("loadmark", StringComparison.Ordinal) ? "Loadmark" : name.StartsWith("Loadmark.", StringComparison.Ordinal) ? name : null;
    }

    private static bool IsWithin(IType type, string space) =>
        type.FullName.StartsWith(space + ".", StringComparison.Ordinal);

    private static bool IsOutsideWorld(IType type) =>
        IsWithin(type, "Spectre") || IsWithin(type, "YamlDotNet") || IsWithin(type, "System.CommandLine") || IsWithin(type, "System.Net")
        || type.FullName is "System.Console" or "System.Environment" or "System.IO.File" or "System.IO.Directory" or "System.IO.Stream"
            or "System.IO.FileStream" or "System.IO.FileInfo" or "System.IO.DirectoryInfo" or "System.IO.StreamReader" or "System.IO.StreamWriter";
}
