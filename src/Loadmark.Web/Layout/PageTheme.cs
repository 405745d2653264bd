using MudBlazor;

namespace Loadmark.Web.Layout;

/// <summary>
/// The colours and typefaces of the component library's parts; those of our own parts are in <c>loadmark.css</c>, the same values.
/// </summary>
internal static class PageTheme
{
    private static readonly string[] Faces = ["ui-sans-serif", "system-ui", "sans-serif"];

    public static MudTheme Theme { get; } = new()
    {
        PaletteLight = new PaletteLight
        {
            Primary = "#1d4f6e",
            PrimaryContrastText = "#ffffff",
            Secondary = "#5b5346",
            SecondaryContrastText = "#ffffff",
            Background = "#f6f3ec",
            Surface = "#fffdf8",
            TextPrimary = "#1e2226",
            TextSecondary = "#4d5257",
            ActionDefault = "#3d4348",
            AppbarBackground = "#fffdf8",
            AppbarText = "#1e2226",
            Divider = "#d8d2c4",
            LinesDefault = "#d8d2c4",
            LinesInputs = "#7c776c",
            TextDisabled = "#6b6f73",
            ActionDisabled = "#6b6f73",
            Error = "#a3122a",
            Success = "#22653a",
            Warning = "#7a4c00",
            Info = "#1d4f6e",
        },
        PaletteDark = new PaletteDark
        {
            Primary = "#8ec5e6",
            PrimaryContrastText = "#10181d",
            Secondary = "#cbbfa9",
            SecondaryContrastText = "#1a1a18",
            Background = "#17191b",
            Surface = "#1f2224",
            TextPrimary = "#ecebe6",
            TextSecondary = "#b9bbb8",
            ActionDefault = "#c9cbc8",
            AppbarBackground = "#1f2224",
            AppbarText = "#ecebe6",
            Divider = "#3a3e41",
            LinesDefault = "#3a3e41",
            LinesInputs = "#8b8f91",
            TextDisabled = "#9a9d9c",
            ActionDisabled = "#9a9d9c",
            Error = "#ff9aa6",
            Success = "#8fd3a4",
            Warning = "#f0c271",
            Info = "#8ec5e6",
        },
        Typography = new Typography
        {
            Default = new DefaultTypography { FontFamily = Faces, FontSize = "1rem", LineHeight = "1.45" },
            Button = new ButtonTypography
            {
                FontFamily = Faces,
                FontSize = "0.9375rem",
                FontWeight = "600",
                TextTransform = "none",
                LineHeight = "1.4",
                LetterSpacing = "0",
            },
        },
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "3px" },
    };
}
