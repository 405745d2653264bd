namespace Loadmark.Web.Tests;

/// <summary>The examples that ship.</summary>
internal static class PageExamples
{
    public static string Read(string name) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", $"{name}.rig.yaml"));
}
