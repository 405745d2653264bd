using System.Reflection;

namespace Loadmark.Browser.Tests.House;

/// <summary>The program that is tested, as it was built with the tests.</summary>
internal static class BuiltProgram
{
    /// <summary>Its file.</summary>
    public static string File { get; } = Repository.PathOf(
        typeof(BuiltProgram).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(static data => data.Key == "Program").Value!);
}
